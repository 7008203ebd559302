package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.PRESSURE;

import javax.measure.quantity.Pressure;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.WorstStop;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.StopPeak;
import org.leat.plant.duties.HighestPressure;

/** Highest pressure of any case against the weakest joint, valve or clamp. */
final class FittingsRating {

    private static final String PATH = "/penstock/rated-fittings";

    static final Rule RULE = Rule.of(
                    "penstock/fittings-rating", ERROR, "weakest joint, valve or clamp against the highest pressure")
            .why(
                    "A penstock is as strong as its weakest coupler. Joints carry no allowance for surges as pipe does, and"
                            + " one that lets go whips the pipe.")
            .formula("highest pressure of any case ≤ working pressure of the weakest fitting · f_T at the hottest wall")
            .judged(
                    "standing, and the worst of every stop of the water, the blow of a parted column included, at the lowest point")
            .source(
                    "joints lose strength with their material: polyethylene the lower of ISO 13761 and Australian practice (PIPA POP013),"
                            + " PVC-U a seller's chart of EN 1452 pipe with fittings (read)")
            .source("EN 805: allowable maximum operating pressure of every component, surge included")
            .passes("holds", "The weakest fitting sees {peak} at most; it may see {limit}.")
            .fails("too-weak", "The weakest fitting sees {peak} at the worst; it may see {limit}.")
            .passes(
                    "holds-rejoined",
                    "The weakest fitting sees {peak} at most, as a parted water column rejoins; it may see {limit}.")
            .fails(
                    "rejoins-too-weak",
                    "The weakest fitting sees up to {peak} as the water column, parted by the worst stop, rejoins; it may see {limit}.")
            .review("damped", WorstStop.DAMPED)
            .judge(FittingsRating::judge)
            .wayOut(
                    "stronger",
                    "Joints, valves and clamps of {rating:bar}.",
                    FieldChanges.ratings("bar", Pressure.class, 6, 10, 16, 25, 40))
            .wayOut(
                    "more-nozzles",
                    NozzlesOnHand.MORE,
                    ChangesForText.only("rejoins-too-weak", (j, failure) -> NozzlesOnHand.more(j)))
            .build();

    private FittingsRating() {}

    private static Outcome judge(Judgement j) {
        Cases cases = j.solved();
        double rating = j.at("/penstock").known(j.numbers().penstock().fittingsRating());
        HighestPressure highest = HighestPressure.anywhere(
                cases, p -> Comparison.atMost(p, rating, PRESSURE).holds());
        Spot spot = j.at(PATH).during(highest.during());
        if (highest.pressure().equals(StopPeak.DAMPED)) {
            return spot.with("allowed", rating, PRESSURE).says("damped");
        } else if (highest.rejoined()) {
            spot = spot.saying("holds-rejoined", "rejoins-too-weak");
        }
        double peak = spot.known(highest.pressure());
        return spot.with("peak", peak, PRESSURE).atMost(peak, rating, PRESSURE);
    }
}
