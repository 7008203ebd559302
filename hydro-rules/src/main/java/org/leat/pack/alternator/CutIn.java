package org.leat.pack.alternator;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.WindingTurns;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Whether the bus is reached with little water. */
final class CutIn {

    static final Rule RULE = Rule.of("alternator/cut-in", WARNING, "whether the bus is reached with little water")
            .why(
                    "No current flows until the alternator turns fast enough for its peak voltage to pass the battery and two"
                            + " diodes. With the smallest nozzle or in the dry season that speed may never come.")
            .formula(
                    "battery power with the least water ≥ share · battery power as built; nothing flows while √2 E_LL <"
                            + " V_dc + 2 V_F")
            .judged("each nozzle set on hand and each flow of the stream, the one that gives least")
            .source("conduction of a three-phase bridge on a battery: begins at √2 E_LL = V_dc + 2 V_F (circuit"
                    + " simulation)")
            .source(COMMON_PRACTICE)
            .limit("least-share", RATIO, 20, "%", COMMON_PRACTICE)
            .passes("reached", "With the least water {power} reach the battery ({speed:rpm}).")
            .fails(
                    "not-reached",
                    "With the least water {power} reach the battery ({speed:rpm}); worth the wear is {limit}.")
            .fails(
                    "does-not-start",
                    "With the least water the jet is too weak to start the wheel: at rest iron and friction hold it, and nothing"
                            + " reaches the battery; worth the wear is {limit}.")
            .judge(CutIn::judge)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .leastWayOut("more-turns", WindingTurns.WITH_WHEEL, WindingTurns::more)
            .build();

    private CutIn() {}

    private static Outcome judge(Judgement j) {
        Cases cases = j.solved();
        List<Running> all = new ArrayList<>(cases.running());
        all.addAll(cases.overTheYear());
        double rated = all.get(0).operatingPoint().batteryPower();
        Running least = Worst.least(all, running -> running.operatingPoint().batteryPower());
        OperatingPoint point = least.operatingPoint();
        double asked = Math.max(j.limit("least-share").value() * rated, 1);
        return j.at("/alternator/open-circuit")
                .during(least)
                .saying(
                        "reached",
                        point.hold() == OperatingPoint.Hold.DOES_NOT_START ? "does-not-start" : "not-reached")
                .with("power", point.batteryPower(), POWER)
                .with("speed", point.speed(), ROTATIONAL_SPEED)
                .atLeast(point.batteryPower(), asked, POWER);
    }
}
