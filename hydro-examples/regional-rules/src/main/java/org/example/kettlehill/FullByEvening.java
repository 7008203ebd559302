package org.example.kettlehill;

import java.util.List;
import java.util.Map;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** How long the plant takes to fill a half-empty bank: our customers are promised a full one by the next evening. */
final class FullByEvening implements Rule {

    static final Map<String, String> TEXTS = Map.of(
            "kettlehill/full-by-evening.soon", "A half-empty bank is full after {value}.",
            "kettlehill/full-by-evening.late", "A half-empty bank is full only after {value}; our customers are promised {limit}.");

    private static final RuleCard CARD = RuleCard.of("kettlehill/full-by-evening", Level.WARNING)
            .title("time to fill a half-empty bank")
            .why("Customers measure us by the evening after a day without water.")
            .formula("t = C V / (2 P), P into the battery")
            .judged("nozzles open as built, all loads off")
            .source("Kettle Hill works manual, chapter 2")
            .limit("time", QuantityKind.TIME, 24, "h", "Kettle Hill works manual, chapter 2")
            .message("soon")
            .message("late")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Running> running = j.cases().running();
        if (running.isEmpty()) {
            return List.of(j.at("/").unknown(j.plant().unsolvable().get(0)));
        }
        BatteryNumbers battery = j.plant().numbers().battery();
        double joules = battery.capacity() * battery.restingVoltage() / 2;
        double watts = running.get(0).operatingPoint().batteryPower();
        // a plant that gives nothing never fills it
        double seconds = watts > 0 ? joules / watts : Double.POSITIVE_INFINITY;
        return List.of(j.at("/battery/capacity")
                .during(running.get(0).id())
                .compare(Comparison.atMost(seconds, j.limit("time")), "soon", "late"));
    }
}
