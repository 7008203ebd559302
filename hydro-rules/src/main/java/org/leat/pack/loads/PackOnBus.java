package org.leat.pack.loads;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ElementPath;
import org.leat.design.Load;
import org.leat.design.VehiclePack;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.HighestBusVoltage;

/** A vehicle or tool pack wired to the bus. */
final class PackOnBus {

    static final Rule RULE = Rule.of("loads/pack-on-bus", ERROR, "a vehicle or tool pack wired to the bus")
            .why(
                    "The bus follows the house battery, and when that is lost the runaway. A lithium pack joined to it without its own"
                            + " charger is overcharged then, and burns.")
            .formula("highest bus voltage of any case ≤ cells · 4.20 V; or through the pack's own charger")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand")
            .source("4.20 V a cell of lithium-ion: makers' data; IEC 62133-2 (from memory)")
            .limit("cell", VOLTAGE, 4.2, "V", "makers' data; IEC 62133-2 (from memory)", LOWER)
            .passes("own-charger", "{pack} is charged through its own charger.")
            .passes("stands-it", "{pack} hangs on the bus, which reaches {value} ({cause}); full it has {limit}.")
            .fails(
                    "overcharged",
                    "{pack} hangs on the bus, which reaches {value} ({cause}); full it has {limit}: it burns.")
            .notApplicable("no-packs", "Not judged: no pack is charged.")
            .judgeAll(PackOnBus::judge)
            .wayOut("use-charger", "Charge it through its own charger.", FieldChanges.to(true))
            .build();

    private PackOnBus() {}

    private static List<Outcome> judge(Judgement j) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < j.design().loads().size(); i++) {
            Load load = j.design().loads().get(i);
            VehiclePack pack = load.pack();
            if (pack != null) {
                String path = ElementPath.item("/loads", j.design().loads(), i);
                outcomes.addAll(j.all(() -> judge(j, load.name(), pack, path)));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/loads").says("no-packs")) : outcomes;
    }

    private static Outcome judge(Judgement j, String name, VehiclePack pack, String path) {
        Spot spot = j.at(path + "/pack/own-charger").with("pack", name);
        if (spot.given(pack.ownCharger())) {
            return spot.says("own-charger");
        }
        HighestBusVoltage highest = HighestBusVoltage.of(j.solved(), BusNode.BATTERY);
        return spot.during(highest.situation())
                .saying("stands-it", "overcharged")
                .with(Arg.phrase("cause", highest.cause()))
                .atMost(highest.volts(), pack.cellsInSeries() * j.limit("cell").value(), VOLTAGE);
    }
}
