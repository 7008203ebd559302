package org.leat.pack;

import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.electrics.DumpElement;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.quantity.QuantityKind;

/** Current of the dump load's switch against its rating. */
final class DumpSwitchRating implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/switch-rating", Level.ERROR)
            .title("current of the dump load's switch against its rating")
            .why(
                    "A relay or transistor that carries more than it is made for welds shut and drains the battery, or burns open"
                            + " and lets the turbine go.")
            .formula("factor · V/R_cold ≤ rating of the switch")
            .judged("battery full, the nozzle set with the highest voltage")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("factor", QuantityKind.RATIO, 1.25, "", RuleCard.COMMON_PRACTICE)
            .message("stands-it", "current")
            .message("overloaded", "current")
            .message("none")
            .message("larger", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> without = Dumped.without(j, "none");
        if (without != null) {
            return without;
        }
        BatteryFull most = Dumped.most(j);
        DumpLoadNumbers dump = j.plant().numbers().dumpLoad();
        if (most == null || dump == null || j.design().dumpLoad() == null) {
            return List.of(j.at("/dump-load/resistance").notGiven("/dump-load/resistance"));
        }
        double current = DumpElement.current(dump.resistanceCold(), most.dumpVoltage());
        return List.of(Rated.atMost(
                j.at("/dump-load/switch-rating").during(most.id()),
                j.limit("factor").value() * current,
                Rated.si(j.design().dumpLoad().switchRating()),
                QuantityKind.CURRENT,
                "stands-it",
                "overloaded",
                Arg.of("current", current, QuantityKind.CURRENT)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.raised(
                this,
                j,
                failure,
                "larger",
                "A",
                ElectricCurrent.class,
                10,
                15,
                20,
                30,
                40,
                50,
                60,
                80,
                100,
                150,
                200,
                300);
    }
}
