package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.HighestBusVoltage;
import org.leat.plant.cases.Cases;

/** Whether each device breaks direct current at the highest voltage it can meet. */
final class DcRated {

    static final Rule RULE = Rule.of(
                    "protection/dc-rated",
                    ERROR,
                    "whether each device breaks direct current at the highest voltage it can meet")
            .why("Direct current has no zero to put out an arc. A fuse or breaker made for alternating current burns on"
                    + " after it has opened.")
            .formula("highest bus voltage of any case ≤ direct voltage the device is rated to break")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand")
            .source("IEC 60364-5-53 with IEC 60947-2 and IEC 60269: rating for direct current")
            .either("rated", "too-low", "The bus reaches {value} ({cause}); {device} breaks direct current at {limit}.")
            .notApplicable("none", "Not judged: there is no fuse, breaker or switch.")
            .judgeAll(DcRated::judge)
            .leastWayOut(
                    "higher",
                    "A device for {rating} d.c.",
                    FieldChanges.raised("V", ElectricPotential.class, 32, 58, 80, 125, 160, 250, 440, 500, 750, 1000))
            .build();

    private DcRated() {}

    private static List<Outcome> judge(Judgement j) {
        Cases cases = j.solved();
        return Devices.each(j, device -> true, "none", device -> {
            BusNode node = BusNode.between(
                    j.design(), device.device().from(), device.device().to());
            HighestBusVoltage highest = HighestBusVoltage.of(cases, node);
            return j.at(device.path() + "/direct-voltage")
                    .during(highest.situation())
                    .with(device.name(), Arg.phrase("cause", highest.cause()))
                    .atMost(highest.volts(), device.device().directVoltage(), VOLTAGE);
        });
    }
}
