package org.leat.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.DeviceKind;
import org.leat.design.Place;
import org.leat.design.Safeguards;

/** Means to isolate battery and turbine. */
final class ProtectionIsolator implements Rule {

    private static final RuleCard CARD = RuleCard.of("protection/isolator", Level.ERROR)
            .title("means to isolate battery and turbine")
            .why(
                    "Nobody can work on wires that cannot be made dead. The battery is never dead by itself, the turbine not"
                            + " while water runs.")
            .formula("a switch or another means stated on both sides of the bus")
            .judged("as built")
            .source("IEC 60364-5-53 clause 536 (isolation); IEC 62485-2 clause 5 (battery)")
            .message("battery-isolated")
            .message("battery-not-isolated")
            .message("turbine-isolated")
            .message("turbine-not-isolated")
            .message("fit")
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
        boolean device =
                Devices.all(j.design()).stream().anyMatch(d -> d.device().kind() != DeviceKind.FUSE && d.joins(place));
        return Stated.so(
                j.at("/safeguards/" + side + "-isolator"),
                device ? Boolean.TRUE : stated,
                side + "-isolated",
                side + "-not-isolated");
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "fit", true);
    }
}
