package org.example.kettlehill;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.TIME;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.BatteryNumbers;

/** How long the plant takes to fill a half-empty bank: our customers are promised a full one by the next evening. */
final class FullByEvening {

    static final Rule RULE = Rule.of("kettlehill/full-by-evening", WARNING, "time to fill a half-empty bank")
            .why("Customers measure us by the evening after a day without water.")
            .formula("t = C V / (2 P), P into the battery")
            .judged("nozzles open as built, all loads off")
            .source("Kettle Hill works manual, chapter 2")
            .limit("time", TIME, 24, "h", "Kettle Hill works manual, chapter 2")
            .passes("soon", "A half-empty bank is full after {value}.")
            .fails("late", "A half-empty bank is full only after {value}; our customers are promised {limit}.")
            .fails("never", "Nothing flows into the battery: a half-empty bank is never full.")
            .judge(FullByEvening::judge)
            .build();

    private FullByEvening() {}

    private static Outcome judge(Judgement j) {
        Running running = j.solved().running().get(0);
        BatteryNumbers battery = j.numbers().battery();
        Spot spot = j.at("/battery/capacity").during(running);
        double joules = battery.capacity() * battery.restingVoltage() / 2;
        double watts = running.operatingPoint().batteryPower();
        return watts > 0 ? spot.atMost(joules / watts, j.limit("time")) : spot.says("never");
    }
}
