package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** Whether the alternator holds the runner. */
final class AlternatorHoldsRunner implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/holds-runner", Level.ERROR)
            .title("whether the alternator holds the runner")
            .why(
                    "The torque of a permanent-magnet alternator on a battery rises with speed to a maximum and then falls. If the runner turns harder than that maximum, it speeds up to near its runaway speed although the battery is connected.")
            .formula("greatest alternator torque on this bus / runner torque at the same speed")
            .judged("running, the nozzle set that leaves the least margin")
            .source(
                    "three-mode bridge model, held against circuit simulation; short-circuit torque limit 1.5 p ψ²/(2L): machine textbooks")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("least", QuantityKind.RATIO, 1.1, "", RuleCard.COMMON_PRACTICE)
            .message("holds", "torque", "runner")
            .message("not-held", "torque", "runner", "speed")
            .message("smaller-nozzle", "bore")
            .message("other-turns", "turns", "diameter")
            .message("below-cut-in")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running worst = Worst.least(j.cases().running(), AlternatorHoldsRunner::ratio);
        OperatingPoint operatingPoint = worst.operatingPoint();
        Spot spot = j.at("/alternator").during(worst.id());
        if (operatingPoint.hold() == OperatingPoint.Hold.BELOW_CUT_IN) {
            return List.of(spot.notApplicable("below-cut-in"));
        }
        return List.of(spot.compare(
                Comparison.atLeast(ratio(worst), j.limit("least")),
                "holds",
                "not-held",
                Arg.of("torque", operatingPoint.peak().torque(), QuantityKind.TORQUE),
                Arg.of("runner", operatingPoint.peak().runnerTorque(), QuantityKind.TORQUE),
                Arg.of("speed", operatingPoint.speed(), QuantityKind.ROTATIONAL_SPEED)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        OtherTurns.any(this, j, failure, "other-turns").ifPresent(ways::add);
        return ways;
    }

    /** Infinite where the runner does not push at that speed. */
    private static double ratio(Running running) {
        OperatingPoint.TorquePeak peak = running.operatingPoint().peak();
        if (running.operatingPoint().hold() == OperatingPoint.Hold.BELOW_CUT_IN) {
            return Double.POSITIVE_INFINITY;
        }
        return peak.runnerTorque() <= 0 ? Double.MAX_VALUE : peak.torque() / peak.runnerTorque();
    }
}
