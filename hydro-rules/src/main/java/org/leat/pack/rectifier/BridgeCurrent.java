package org.leat.pack.rectifier;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.CURRENT;

import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Bridge current against its rating. */
final class BridgeCurrent {

    static final Rule RULE = Rule.of("rectifier/current", ERROR, "bridge current against its rating")
            .why("A bridge run above its average current overheats, and a shorted diode brakes the wheel with one phase"
                    + " until something burns.")
            .formula("I_dc at the solved operating point ≤ average current of the bridge")
            .judged("running, the nozzle set with most current")
            .source("mean of one diode I_dc/3 in a three-phase bridge: Rashid, Power Electronics, ch. 3")
            .passes("carried", "The bridge carries {value}.")
            .fails("overloaded", "The bridge carries {value}; it is made for {limit}.")
            .judge(BridgeCurrent::judge)
            .leastWayOut(
                    "larger",
                    "A bridge for {rating}.",
                    FieldChanges.ratings("A", ElectricCurrent.class, 10, 15, 25, 35, 50, 75, 100, 150, 200, 300))
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .build();

    private BridgeCurrent() {}

    private static Outcome judge(Judgement j) {
        Running worst = Worst.running(j, OperatingPoint::directCurrent);
        return j.at("/rectifier/average-current")
                .during(worst)
                .atMost(
                        worst.operatingPoint().directCurrent(),
                        j.numbers().rectifier().averageCurrentRating(),
                        CURRENT);
    }
}
