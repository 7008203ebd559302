package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.RATIO;

import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.DumpLoad;
import org.leat.pack.kit.FieldChanges;
import org.leat.plant.cases.BatteryFull;

/** Current of the dump load's switch against its rating. */
final class SwitchRating {

    static final Rule RULE = Rule.of(
                    "dump/switch-rating", ERROR, "current of the dump load's switch against its rating")
            .why(
                    "A relay or transistor that carries more than it is made for welds shut and drains the battery, or burns open"
                            + " and lets the turbine go.")
            .formula("factor · V/R_cold ≤ rating of the switch")
            .judged("battery full, the nozzle set with the highest voltage")
            .source(COMMON_PRACTICE)
            .limit("factor", RATIO, 1.25, "", COMMON_PRACTICE, HIGHER)
            .passes("stands-it", "The switch of the dump load carries {current}.")
            .fails(
                    "overloaded",
                    "The switch of the dump load carries {current}; with its factor it needs {value} and is made"
                            + " for {limit}.")
            .notApplicable("none", DumpLoads.NONE)
            .judge(DumpLoads.judge(SwitchRating::judge))
            .leastWayOut(
                    "larger",
                    "A switch for {rating} d.c.",
                    FieldChanges.raised("A", ElectricCurrent.class, 10, 15, 20, 30, 40, 50, 60, 80, 100, 150, 200, 300))
            .build();

    private SwitchRating() {}

    private static Outcome judge(Judgement j, DumpLoad dump) {
        BatteryFull most = DumpLoads.hardest(j);
        double current = DumpLoads.current(j);
        return j.at("/dump-load/switch-rating")
                .during(most)
                .with("current", current, CURRENT)
                .atMost(j.limit("factor").value() * current, dump.switchRating(), CURRENT);
    }
}
