package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;

/** A fuse within reach of the battery's pole. */
final class BatteryFuse {

    static final Rule RULE = Rule.of("protection/battery-fuse", ERROR, "a fuse close to the battery's pole")
            .why(
                    "Everything between the battery's pole and its first fuse is protected by nothing at all. A spanner or a"
                            + " chafed cable there burns until the battery is empty.")
            .formula("length of cable from the pole to the first fuse or breaker ≤ limit")
            .judged("as built, each device at the battery")
            .source(COMMON_PRACTICE)
            .source("IEC 60364-4-43 clause 434.2.1 allows 3 m only where a fault is as good as impossible")
            .limit("distance", LENGTH, 0.3, "m", COMMON_PRACTICE, LOWER)
            .passes("close", "{device} sits {value} from the battery's pole.")
            .fails(
                    "far",
                    "{device} sits {value} from the battery's pole; the cable before it is protected by nothing (good is"
                            + " {limit}).")
            .fails("none", "No fuse or breaker at the battery.")
            .judgeAll(BatteryFuse::judge)
            .leastWayOut(
                    "nearer",
                    "The device {rating} from the pole.",
                    ChangesForText.except("none", FieldChanges.ratings("mm", Length.class, 300, 200, 100)))
            .advice(
                    "add",
                    "A fuse or breaker for direct current in each run that leaves the battery's pole, no farther from it than"
                            + " {distance:mm}.",
                    ChangesForText.only(
                            "none",
                            (j, failure) -> Stream.of(Change.advice()
                                    .with("distance", j.limit("distance").value(), LENGTH))))
            .build();

    private BatteryFuse() {}

    private static List<Outcome> judge(Judgement j) {
        j.at("/protection").given(j.design().protection());
        return Devices.each(j, Devices.Placed::opensAtBattery, "none", device -> {
            Spot spot = j.at(device.path() + "/distance-from-battery").with(device.name());
            return spot.atMost(spot.si(device.device().distanceFromBattery()), j.limit("distance"));
        });
    }
}
