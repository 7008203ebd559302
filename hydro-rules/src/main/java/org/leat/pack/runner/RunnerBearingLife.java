package org.leat.pack.runner;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.FORCE;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.stream.Stream;
import javax.measure.quantity.Force;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Bearings;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.RunnerParts;
import org.leat.pack.kit.StandardSizes;
import org.leat.plant.cases.Cases;
import org.leat.plant.duties.BearingDuty;
import org.leat.quantity.Si;

/** Life of the bearing beside the runner under jet and weight. */
final class RunnerBearingLife {

    private static final String RATING = "/runner/bearings/dynamic-rating";

    static final Rule RULE = Rule.of("runner/bearing-life", WARNING, "life of the bearing beside the runner")
            .why(
                    "A bearing that dies lets the wheel touch its housing. Alternators made for other work seldom expect a wheel"
                            + " that hangs on their shaft; water past the seal ends any bearing sooner.")
            .formula("L = 10⁶ · 2π/ω · (C/P)^p; P = (F_jet + m g)(L_b + a)/L_b, with 0.56 P + 1.6 F_axial where more")
            .judged("running, one jet alone pulling with the weight, on the nozzle set that wears most")
            .source("ISO 281:2007, 5.3 and table 3")
            .source(COMMON_PRACTICE)
            .limit("life", TIME, 20000, "h", COMMON_PRACTICE)
            .passes("lasts", "Under {load} the bearing beside the runner lasts {value}.")
            .fails("wears", "Under {load} the bearing beside the runner lasts {value}; good is {limit}.")
            .notApplicable("unloaded", "Not judged: nothing wears the bearing, the wheel does not turn.")
            .judge(RunnerBearingLife::judge)
            .wayOut("stronger", "A bearing rated {rating:kN} (C).", RunnerBearingLife::stronger)
            .build();

    private RunnerBearingLife() {}

    private static Outcome judge(Judgement j) {
        Bearings bearings = j.at("/").given("/runner/bearings", RunnerParts.bearings(j));
        Cases cases = j.solved();
        Spot spot = j.at(RATING);
        BearingDuty duty = BearingDuty.worst(cases, RunnerParts.shaft(j, spot));
        Spot running = spot.during(duty.running());
        return duty.turns()
                ? running.with("load", duty.load(), FORCE)
                        .atLeast(running.known(duty.life(Si.of(bearings.dynamicRating()))), j.limit("life"))
                : running.says("unloaded");
    }

    private static Stream<Change> stronger(Judgement j, Outcome.Fail failure) {
        double life = j.limit("life").value();
        return BearingDuty.neededRating(j.solved(), RunnerParts.shaft(j, j.at(RATING)), life).stream()
                .flatMap(needed -> StandardSizes.bearing(needed).stream())
                .mapToObj(rating -> FieldChanges.rated(RATING, rating, "N", Force.class));
    }
}
