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
import org.leat.design.ElementPath;
import org.leat.design.Load;
import org.leat.design.VehiclePack;
import org.leat.quantity.QuantityKind;

/** A vehicle or tool pack wired to the bus. */
final class LoadsPackOnBus implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("loads/pack-on-bus", Level.ERROR)
            .title("a vehicle or tool pack wired to the bus")
            .why(
                    "The bus follows the house battery, and when that is lost the runaway. A lithium pack joined to it without its own"
                            + " charger is overcharged then, and burns.")
            .formula("highest bus voltage of any case ≤ cells · 4.20 V; or through the pack's own charger")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand")
            .source("4.20 V a cell of lithium-ion: makers' data; IEC 62133-2 (from memory)")
            .limit("cell", QuantityKind.VOLTAGE, 4.2, "V", "makers' data; IEC 62133-2 (from memory)")
            .message("own-charger", "pack")
            .message("stands-it", "pack", "cause")
            .message("overcharged", "pack", "cause")
            .message("no-packs")
            .message("use-charger")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < j.design().loads().size(); i++) {
            Load load = j.design().loads().get(i);
            if (load.pack() != null) {
                outcomes.add(judge(
                        j,
                        load,
                        load.pack(),
                        ElementPath.item("/loads", j.design().loads(), i)));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/loads").notApplicable("no-packs")) : outcomes;
    }

    private static Outcome judge(Judgement j, Load load, VehiclePack pack, String path) {
        Spot spot = j.at(path + "/pack/own-charger");
        Arg name = Arg.of("pack", load.name());
        if (Boolean.TRUE.equals(pack.ownCharger())) {
            return spot.pass("own-charger", name);
        }
        if (pack.ownCharger() == null) {
            return spot.notGiven(spot.path());
        }
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j).get(0);
        }
        HighestBusVoltage highest = HighestBusVoltage.of(j.cases());
        return spot.during(highest.situation())
                .compare(
                        Comparison.atMost(
                                highest.volts(),
                                pack.cellsInSeries() * j.limit("cell").value(),
                                QuantityKind.VOLTAGE),
                        "stands-it",
                        "overcharged",
                        name,
                        Arg.phrase("cause", highest.cause()));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "use-charger", true);
    }
}
