package org.leat.pack;

import java.util.List;
import javax.measure.quantity.Length;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.quantity.QuantityKind;

/** A fuse close to the battery's pole. */
final class ProtectionBatteryFuse implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/battery-fuse", Level.ERROR)
            .title("a fuse close to the battery's pole")
            .why(
                    "Everything between the battery's pole and its first fuse is protected by nothing at all. A spanner or a"
                            + " chafed cable there burns until the battery is empty.")
            .formula("length of cable from the pole to the first fuse or breaker ≤ limit")
            .judged("as built, each device at the battery")
            .source(RuleCard.COMMON_PRACTICE)
            .source("IEC 60364-4-43 clause 434.2.1 allows 3 m only where a fault is as good as impossible")
            .limit("distance", QuantityKind.LENGTH, 0.3, "m", RuleCard.COMMON_PRACTICE)
            .message("close", "device")
            .message("far", "device")
            .message("none")
            .message("nearer", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.design().protection().isEmpty()) {
            return List.of(j.at("/protection").notGiven("/protection"));
        }
        List<Devices.Placed> devices = Devices.atBattery(j.design());
        return devices.isEmpty()
                ? List.of(j.at("/protection").fail("none"))
                : devices.stream().map(d -> judge(j, d)).toList();
    }

    private static Outcome judge(Judgement j, Devices.Placed placed) {
        Spot spot = j.at(placed.path() + "/distance-from-battery");
        Double distance = Rated.si(placed.device().distanceFromBattery());
        return distance == null
                ? spot.notGiven(spot.path())
                : spot.compare(Comparison.atMost(distance, j.limit("distance")), "close", "far", placed.name());
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return failure.comparison() == null
                ? List.of()
                : Rated.larger(this, j, failure, "nearer", "mm", Length.class, 300, 200, 100);
    }
}
