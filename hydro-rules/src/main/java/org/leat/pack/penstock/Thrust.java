package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.newtons;
import static org.leat.quantity.QuantityKind.FORCE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.WorstStop;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.StopPeak;
import org.leat.plant.duties.AnchorThrust;

/** Thrust at bends and at the end against what the anchors hold. */
final class Thrust {

    private static final String PATH = "/penstock/anchors";

    static final Rule RULE = Rule.of("penstock/thrust", WARNING, "thrust at bends and end against the anchors")
            .canFailAs(ERROR)
            .warningsHurt()
            .why(
                    "Water under pressure pushes every bend outward and the end off the pipe, hardest in the moment of a surge."
                            + " An anchor that gives lets joints slip out one by one.")
            .formula(
                    "end: p A; bend: 2 (p A + ρ Q²/A) sin(θ/2); A of the outside diameter, p of the worst stop; an error where it is a"
                            + " multiple of what the anchors hold")
            .judged("the worst stop of the water, at its highest pressure, wherever the bend lies in its section")
            .source("EN 805; momentum theorem")
            .source(COMMON_PRACTICE)
            .limit("gross", RATIO, 3, "", COMMON_PRACTICE, Safer.LOWER)
            .passes("held", "The water pushes with {value} at section {place}; the anchors hold {limit}.")
            .fails(
                    "not-held",
                    "The water pushes with {value} at section {place} in the worst stop; the anchors hold"
                            + " {limit}.")
            .passes(
                    "held-rejoined",
                    "The water pushes with {value} at most at section {place}, as a parted water column rejoins; the anchors hold"
                            + " {limit}.")
            .fails(
                    "rejoins-not-held",
                    "The water pushes with {value} at section {place} as the water column, parted by the worst stop, rejoins; the"
                            + " anchors hold {limit}.")
            .review("damped", WorstStop.DAMPED)
            .judge(Thrust::judge)
            .wayOut("anchor", "Anchors at bends and end that hold {force} each.", Thrust::anchor)
            .build();

    private Thrust() {}

    private static Outcome judge(Judgement j) {
        Cases cases = j.solved();
        double held = j.at("/penstock").si(PATH, j.design().penstock().anchors());
        AnchorThrust thrust = AnchorThrust.greatest(cases, j.design().penstock().sections(), held);
        Spot spot = j.at(PATH).during(thrust.during()).with("place", thrust.section());
        if (thrust.force().equals(StopPeak.DAMPED)) {
            return spot.with("allowed", held, FORCE).says("damped");
        } else if (thrust.rejoined()) {
            spot = spot.saying("held-rejoined", "rejoins-not-held");
        }
        double force = spot.known(thrust.force());
        return spot.as(force > j.limit("gross").value() * held ? ERROR : WARNING)
                .atMost(force, held, FORCE);
    }

    private static Stream<Change> anchor(Judgement j, Outcome.Fail failure) {
        AnchorThrust most =
                AnchorThrust.greatest(j.solved(), j.design().penstock().sections());
        double force = Math.ceil(most.force().or(failure.value()) / 100) * 100;
        return Stream.of(Change.of(PATH, newtons(force)).with("force", force, FORCE));
    }
}
