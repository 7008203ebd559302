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
import org.leat.check.WayOut;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** Working speed against the speed of the torque peak. */
final class AlternatorTorquePeak implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/torque-peak", Level.WARNING)
            .canFailAs(Level.ERROR)
            .title("working speed against the speed of the torque peak")
            .why(
                    "Close to the speed of its greatest torque an alternator on a battery has nothing left: a warm winding, a"
                            + " cell more or a little more water and the wheel slips past the peak and runs away.")
            .formula("ω / ω of greatest torque ≤ limit; past one the point is unstable")
            .judged("running, the nozzle set nearest to the peak")
            .source("three-mode bridge model, held against circuit simulation")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("most", QuantityKind.RATIO, 0.85, "", RuleCard.COMMON_PRACTICE)
            .message("clear", "speed", "peak")
            .message("close", "speed", "peak")
            .message("past", "speed", "peak")
            .message("smaller-nozzle", "bore")
            .message("other-turns", "turns", "diameter")
            .message("no-current")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Running> loaded = j.cases().running().stream()
                .filter(r -> r.operatingPoint().hold() != OperatingPoint.Hold.BELOW_CUT_IN)
                .toList();
        if (loaded.isEmpty()) {
            return j.cases().running().isEmpty()
                    ? Open.unsolved(j)
                    : List.of(j.at("/alternator").notApplicable("no-current"));
        }
        Running worst = Worst.most(loaded, r -> r.operatingPoint().ofPeakSpeed());
        OperatingPoint operatingPoint = worst.operatingPoint();
        boolean past = operatingPoint.ofPeakSpeed() > 1;
        return List.of(j.at("/alternator")
                .during(worst.id())
                .compare(
                        past ? Level.ERROR : Level.WARNING,
                        Comparison.atMost(operatingPoint.ofPeakSpeed(), j.limit("most")),
                        "clear",
                        past ? "past" : "close",
                        Arg.of("speed", operatingPoint.speed(), QuantityKind.ROTATIONAL_SPEED),
                        Arg.of("peak", operatingPoint.peak().speed(), QuantityKind.ROTATIONAL_SPEED)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        OtherTurns.any(this, j, failure, "other-turns").ifPresent(ways::add);
        return ways;
    }
}
