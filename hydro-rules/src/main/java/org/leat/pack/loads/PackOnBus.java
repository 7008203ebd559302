package org.leat.pack.loads;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
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
        List<Load> loads = j.design().loads();
        List<Integer> packs = IntStream.range(0, loads.size())
                .filter(i -> loads.get(i).pack() != null)
                .boxed()
                .toList();
        return j.eachOr(
                j.at("/loads").says("no-packs"),
                packs,
                i -> judge(j, loads.get(i), ElementPath.item("/loads", loads, i)));
    }

    private static Outcome judge(Judgement j, Load load, String path) {
        VehiclePack pack = Objects.requireNonNull(load.pack());
        Spot spot = j.at(path + "/pack/own-charger").with("pack", load.name());
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
