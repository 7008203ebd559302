package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import javax.measure.quantity.Power;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.DumpLoad;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BatteryFull;

/** Power of the dump load's element against its rating. */
final class OwnRating {

    static final Rule RULE = Rule.of("dump/own-rating", ERROR, "power of the dump load's element against its rating")
            .why(
                    "An element that takes more than its rating burns out, and with it goes what holds the turbine. Cold it"
                            + " takes most.")
            .formula(
                    "V²/R_cold at the highest voltage across it, behind the bridge of a tracking or series regulator no more than"
                            + " the turbine gives ≤ power rating")
            .judged("battery full, the nozzle set with the highest voltage")
            .source("P = V²/R: Ohm's law")
            .passes("stands-it", "At {voltage} the element takes {value}.")
            .fails("overloaded", "At {voltage} the element takes {value} and is made for {limit}.")
            .notApplicable("none", DumpLoads.NONE)
            .judge(DumpLoads.judge(OwnRating::judge))
            .leastWayOut(
                    "larger",
                    "Elements for {rating}.",
                    FieldChanges.raised("W", Power.class, 100, 200, 300, 500, 750, 1000, 1500, 2000, 3000, 5000))
            .build();

    private OwnRating() {}

    private static Outcome judge(Judgement j, DumpLoad dump) {
        BatteryFull most = Worst.most(j.solved().batteryFull(), BatteryFull::elementPower);
        return j.at("/dump-load/power-rating")
                .during(most)
                .with("voltage", most.dumpVoltage(), VOLTAGE)
                .atMost(most.elementPower(), dump.powerRating(), POWER);
    }
}
