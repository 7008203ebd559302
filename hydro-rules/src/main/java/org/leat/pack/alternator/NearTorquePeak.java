package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.WindingTurns;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Working speed against the speed of the torque peak. */
final class NearTorquePeak {

    static final Rule RULE = Rule.of(
                    "alternator/torque-peak", WARNING, "working speed against the speed of the torque peak")
            .canFailAs(ERROR)
            .why(
                    "Close to the speed of its greatest torque an alternator on a battery has nothing left: a warm winding, a"
                            + " cell more or a little more water and the wheel slips past the peak and runs away.")
            .formula("ω / ω of greatest torque ≤ limit; past one the point is unstable")
            .judged("running, the nozzle set nearest to the peak")
            .source("three-mode bridge model, held against circuit simulation")
            .source(COMMON_PRACTICE)
            .limit("most", RATIO, 0.85, "", COMMON_PRACTICE, LOWER)
            .passes(
                    "clear",
                    "The wheel turns at {value} times the speed of the alternator's greatest torque ({speed:rpm} of"
                            + " {peak:rpm}).")
            .fails(
                    "close",
                    "The wheel turns at {value} times the speed of the alternator's greatest torque ({speed:rpm} of"
                            + " {peak:rpm}); good is {limit}.")
            .fails(
                    "past",
                    "The wheel turns past the speed of the alternator's greatest torque ({speed:rpm}, the peak is at"
                            + " {peak:rpm}): the battery does not hold it.")
            .notApplicable("no-current", "Not judged: the bus voltage is not reached, no current flows.")
            .judge(NearTorquePeak::judge)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .leastWayOut("other-turns", WindingTurns.WITH_WHEEL, WindingTurns::fewerWithWheel, WindingTurns::more)
            .build();

    private NearTorquePeak() {}

    private static Outcome judge(Judgement j) {
        List<Running> loaded = j.solved().running().stream()
                .filter(r -> r.operatingPoint().loaded())
                .toList();
        if (loaded.isEmpty()) {
            return j.at("/alternator").says("no-current");
        }
        Running worst = Worst.most(loaded, r -> r.operatingPoint().ofPeakSpeed());
        OperatingPoint point = worst.operatingPoint();
        boolean past = point.ofPeakSpeed() > 1;
        return j.at("/alternator")
                .during(worst)
                .as(past ? ERROR : WARNING)
                .saying("clear", past ? "past" : "close")
                .with("speed", point.speed(), ROTATIONAL_SPEED)
                .with("peak", point.peak().speed(), ROTATIONAL_SPEED)
                .atMost(point.ofPeakSpeed(), j.limit("most"));
    }
}
