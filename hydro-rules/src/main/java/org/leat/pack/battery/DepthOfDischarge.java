package org.leat.pack.battery;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.ENERGY;
import static org.leat.quantity.QuantityKind.RATIO;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.LeanSeason;
import org.leat.plant.duties.FullDay;

/** Deepest discharge of a day in the leanest season. */
final class DepthOfDischarge {

    static final Rule RULE = Rule.of(
                    "battery/depth-of-discharge", WARNING, "deepest discharge of a day in the leanest season")
            .why(
                    "Lead that is emptied below half every night lasts a year or two instead of ten. A stream that runs all day needs"
                            + " little battery, but what it needs it needs every day.")
            .formula(
                    "energy drawn if all loads begin together while the turbine goes on / energy of the bank ≤ chemistry's"
                            + " depth")
            .judged("a day of full use at the flow of the year that gives least; days that fall short are judged by"
                    + " loads/energy-balance")
            .source("depth by chemistry: common practice, as tabled with the cells' properties")
            .passes("shallow", "A full day takes {drawn} from the battery, {value} of it.")
            .fails("deep", "A full day takes {drawn} from the battery, {value} of it; it lasts with {limit}.")
            .judge(DepthOfDischarge::judge)
            .wayOut("larger", BankSizes.BANK, BankSizes::larger)
            .build();

    private DepthOfDischarge() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/battery/capacity").during(LeanSeason.running(j));
        FullDay day = LeanSeason.day(j, spot);
        return spot.with("drawn", day.drawn(), ENERGY)
                .atMost(day.depth(), j.numbers().battery().usualDepthOfDischarge(), RATIO);
    }
}
