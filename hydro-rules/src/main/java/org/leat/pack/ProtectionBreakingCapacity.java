package org.leat.pack;

import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.quantity.QuantityKind;

/** Breaking capacity of each device at the battery against the battery's fault current. */
final class ProtectionBreakingCapacity implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/breaking-capacity", Level.ERROR)
            .title("breaking capacity against the battery's fault current")
            .why(
                    "A fuse that cannot break the current of a shorted battery keeps an arc alive inside it and bursts. Small"
                            + " banks of lithium cells reach several thousand amperes.")
            .formula("I = V_full / R_battery at its poles ≤ breaking capacity for direct current")
            .judged("short circuit at the battery, full")
            .source("IEC 60364-4-43 clause 434.5.1")
            .source("Ohm's law; held against a measured short circuit of four lead batteries (Freitas, 1992)")
            .message("breaks-it", "device")
            .message("too-low", "device")
            .message("none-at-battery")
            .message("higher", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Devices.Placed> devices = Devices.atBattery(j.design());
        double current = BatteryFault.current(j, 0);
        return devices.isEmpty()
                ? List.of(j.at("/protection").notApplicable("none-at-battery"))
                : devices.stream()
                        .map(d -> Rated.atMost(
                                j.at(d.path() + "/breaking-capacity"),
                                current,
                                Rated.si(d.device().breakingCapacity()),
                                QuantityKind.CURRENT,
                                "breaks-it",
                                "too-low",
                                d.name()))
                        .toList();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.raised(
                this,
                j,
                failure,
                "higher",
                "kA",
                ElectricCurrent.class,
                1,
                2.5,
                3,
                4.5,
                6,
                10,
                15,
                20,
                25,
                33,
                50,
                100);
    }
}
