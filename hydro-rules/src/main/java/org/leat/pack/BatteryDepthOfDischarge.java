package org.leat.pack;

import java.util.List;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
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
import org.leat.quantity.QuantityKind;

/** Deepest discharge of a day in the leanest season. */
final class BatteryDepthOfDischarge implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/depth-of-discharge", Level.WARNING)
            .title("deepest discharge of a day in the leanest season")
            .why(
                    "Lead that is emptied below half every night lasts a year or two instead of ten. A stream that runs all day needs"
                            + " little battery, but what it needs it needs every day.")
            .formula(
                    "energy drawn if all loads begin together while the turbine goes on / energy of the bank ≤ chemistry's"
                            + " depth")
            .judged("a day of full use at the flow of the year that gives least; days that fall short are judged by"
                    + " loads/energy-balance")
            .source("depth by chemistry: common practice, as tabled with the cells' properties")
            .message("shallow", "drawn")
            .message("deep", "drawn")
            .message("larger", "capacity")
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
        DailyUse daily = DailyUse.of(j.design());
        Running lean = Lean.of(j);
        Spot spot = j.at("/battery/capacity").during(lean.id());
        if (daily.missing() != null) {
            return List.of(spot.notGiven(daily.missing()));
        }
        double drawn =
                DailyUse.deepest(j.design(), daily.use(), lean.operatingPoint().batteryPower());
        double depth = CellChemistryCatalogue.usual(j.design().battery().chemistry(), CellProperty.DEPTH_OF_DISCHARGE);
        return List.of(spot.compare(
                Comparison.atMost(drawn / Lean.stored(j), depth, QuantityKind.RATIO),
                "shallow",
                "deep",
                Arg.of("drawn", drawn, QuantityKind.ENERGY)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Lean.largerBank(this, j, failure);
    }
}
