package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Limit;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Runner;
import org.leat.design.RunnerKind;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** Bucket speed over jet speed at the solved operating point of each nozzle set. */
final class RunnerSpeedRatio implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/speed-ratio", Level.WARNING)
            .canFailAs(Level.ERROR)
            .hurtsNobody()
            .title("bucket speed against jet speed")
            .why(
                    "A wheel takes most from the jet when its buckets move a little slower than half as fast. Where battery"
                            + " and winding hold it far from that, the water leaves with the power. Past the stated share of the"
                            + " best ratio the rule fails as an error.")
            .formula("φ = π D_p n / V_j, at the speed where runner and alternator torque meet")
            .judged("running on each nozzle set on hand, battery at its state of charge")
            .source("Euler's turbine equation; best ratio of real wheels 0.43 to 0.48 on √(2gH): White, Fluid Mechanics"
                    + " (from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("low", QuantityKind.RATIO, 0.40, "", RuleCard.COMMON_PRACTICE)
            .limit("high", QuantityKind.RATIO, 0.50, "", RuleCard.COMMON_PRACTICE)
            .limit("turgo-low", QuantityKind.RATIO, 0.45, "", RuleCard.COMMON_PRACTICE)
            .limit("turgo-high", QuantityKind.RATIO, 0.58, "", RuleCard.COMMON_PRACTICE)
            .limit("gross-share", QuantityKind.RATIO, 0.35, "", RuleCard.COMMON_PRACTICE)
            .message("matched", "speed", "jet")
            .message("mismatched", "speed", "jet", "power")
            .message("no-current")
            .message("other-diameter", "diameter", "ratio", "power")
            .message("other-cells", "cells", "ratio", "power")
            .message("other-turns", "turns", "ratio", "power")
            .message("delta", "ratio", "power")
            .message("star", "ratio", "power")
            .message("tracking", "ratio", "power", "voltage")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Runner runner = j.design().runner();
        if (runner == null) {
            return List.of(j.at("/").notGiven("/runner/pitch-diameter"));
        }
        boolean turgo = runner.kind() == RunnerKind.TURGO;
        Limit low = j.limit(turgo ? "turgo-low" : "low");
        Limit high = j.limit(turgo ? "turgo-high" : "high");
        double gross = j.limit("gross-share").value();
        double best = (low.value() + high.value()) / 2;
        List<Outcome> outcomes = new ArrayList<>();
        for (Running running : j.cases().running()) {
            OperatingPoint operatingPoint = running.operatingPoint();
            var spot = j.at("/runner/pitch-diameter").during(running.id());
            if (operatingPoint.hold() == OperatingPoint.Hold.BELOW_CUT_IN) {
                outcomes.add(spot.notApplicable("no-current"));
                continue;
            }
            double ratio = operatingPoint.speedRatio();
            Level level = Math.abs(ratio - best) > gross * best ? Level.ERROR : Level.WARNING;
            outcomes.add(spot.compare(
                    level,
                    Comparison.within(ratio, low, high),
                    "matched",
                    "mismatched",
                    Arg.of("speed", operatingPoint.speed(), QuantityKind.ROTATIONAL_SPEED),
                    Arg.of("jet", running.water().jetVelocity(), QuantityKind.SPEED),
                    Arg.of("power", operatingPoint.batteryPower(), QuantityKind.POWER)));
        }
        return outcomes.isEmpty() ? Open.unsolved(j) : outcomes;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        for (Running running : j.cases().running()) {
            if (running.id().equals(failure.during()) && failure.comparison() != null) {
                return new SpeedMatch(this, j, failure, running.nozzles()).ways();
            }
        }
        return List.of();
    }
}
