package org.leat.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.DeviceKind;
import org.leat.design.Place;
import org.leat.design.Safeguards;

/** Means to isolate battery and turbine. */
final class ProtectionIsolator implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/isolator", Level.ERROR)
            .title("means to isolate battery and turbine")
            .why(
                    "Nobody can work on wires that cannot be made dead. The battery is never dead by itself, the turbine not"
                            + " while water runs.")
            .formula(
                    "a switch or breaker, or another means stated, on both sides of the bus; a switch that may not break load is"
                            + " no means while current flows")
            .judged("as built")
            .source(
                    "IEC 60364-5-53 clause 536 (isolation), IEC 60947-3 (switches: utilisation category tells what they break); IEC 62485-2 clause 5 (battery)")
            .message("battery-isolated")
            .message("battery-not-isolated")
            .message("turbine-isolated")
            .message("turbine-not-isolated")
            .message("not-under-load", "device")
            .message("fit")
            .message("load-break", "device")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Safeguards safeguards = j.design().safeguards();
        return List.of(
                side(j, "battery", safeguards == null ? null : safeguards.batteryIsolator(), Place.BATTERY),
                side(j, "turbine", safeguards == null ? null : safeguards.turbineIsolator(), Place.RECTIFIER));
    }

    private static Outcome side(Judgement j, String side, @Nullable Boolean stated, Place place) {
        List<Devices.Placed> means = Devices.all(j.design()).stream()
                .filter(d -> d.device().kind() != DeviceKind.FUSE && d.joins(place))
                .toList();
        Spot field = j.at("/safeguards/" + side + "-isolator");
        if (means.stream().anyMatch(ProtectionIsolator::breaksLoad)) {
            return field.pass(side + "-isolated");
        }
        if (means.isEmpty()) {
            return Stated.so(field, stated, side + "-isolated", side + "-not-isolated");
        }
        Devices.Placed device = means.get(0);
        Spot spot = j.at(device.path() + "/breaks-load");
        return device.device().breaksLoad() == null
                ? spot.notGiven(spot.path())
                : spot.fail("not-under-load", device.name());
    }

    /** A breaker opens under load by what it is; a switch only where it says so. */
    private static boolean breaksLoad(Devices.Placed device) {
        return device.device().kind() == DeviceKind.BREAKER
                || Boolean.TRUE.equals(device.device().breaksLoad());
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return failure.path().endsWith("/breaks-load")
                ? Stated.otherwise(
                        this,
                        j,
                        failure,
                        "load-break",
                        true,
                        failure.message().args().get(0))
                : Stated.otherwise(this, j, failure, "fit", true);
    }
}
