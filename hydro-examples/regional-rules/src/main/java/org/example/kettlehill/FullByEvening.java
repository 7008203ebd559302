package org.example.kettlehill;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.quantity.QuantityKind;

/** How long the plant takes to fill a half-empty bank: our customers are promised a full one by the next evening. */
final class FullByEvening {

    private static final String MANUAL = "Kettle Hill works manual, chapter 2";

    static final Rule RULE = Rule.of("kettlehill/full-by-evening", Level.WARNING, "time to fill a half-empty bank")
            .why("Customers measure us by the evening after a day without water.")
            .formula("t = C V / (2 P), P into the battery")
            .judged("nozzles open as built, all loads off")
            .source(MANUAL)
            .limit("time", QuantityKind.TIME, 24, "h", MANUAL)
            .passes("soon", "A half-empty bank is full after {value}.")
            .fails("late", "A half-empty bank is full only after {value}; our customers are promised {limit}.")
            .fails("never", "The plant gives the bank nothing; our customers are promised a full one in a day.")
            .judge(FullByEvening::judge)
            .build();

    private FullByEvening() {}

    private static Outcome judge(Judgement j) {
        Running running = j.solved().running().get(0);
        BatteryNumbers battery = j.numbers().battery();
        double joules = battery.capacity() * battery.restingVoltage() / 2;
        double watts = running.operatingPoint().batteryPower();
        var spot = j.at("/battery/capacity").during(running);
        return watts > 0 ? spot.saying("soon", "late").atMost(joules / watts, j.limit("time")) : spot.says("never");
    }
}
