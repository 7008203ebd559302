package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;

/** Breaking capacity of each device at the battery against the battery's fault current. */
final class BreakingCapacity {

    static final Rule RULE = Rule.of(
                    "protection/breaking-capacity", ERROR, "breaking capacity against the battery's fault current")
            .why(
                    "A fuse that cannot break the current of a shorted battery keeps an arc alive inside it and bursts. Small"
                            + " banks of lithium cells reach several thousand amperes.")
            .formula("I = V_full / R_battery at its poles ≤ breaking capacity for direct current")
            .judged("short circuit at the battery, full")
            .source("IEC 60364-4-43 clause 434.5.1")
            .source("Ohm's law; held against a measured short circuit of four lead batteries (Freitas, 1992)")
            .either("breaks-it", "too-low", "The battery drives {value} into a short circuit; {device} breaks {limit}.")
            .notApplicable("none-at-battery", "Not judged: no fuse or breaker at the battery.")
            .judgeAll(BreakingCapacity::judge)
            .leastWayOut(
                    "higher",
                    "A device that breaks {rating} direct.",
                    FieldChanges.raised("kA", ElectricCurrent.class, 1, 2.5, 3, 4.5, 6, 10, 15, 20, 25, 33, 50, 100))
            .build();

    private BreakingCapacity() {}

    private static List<Outcome> judge(Judgement j) {
        double current = j.numbers().battery().faultCurrent(0);
        return Devices.each(
                j,
                Devices.Placed::opensAtBattery,
                "none-at-battery",
                device -> j.at(device.path() + "/breaking-capacity")
                        .with(device.name())
                        .atMost(current, device.device().breakingCapacity(), CURRENT));
    }
}
