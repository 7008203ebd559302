package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DeviceKind;
import org.leat.design.Place;
import org.leat.design.Safeguards;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;

/** Means to isolate battery and turbine. */
final class Isolator {

    static final Rule RULE = Rule.of("protection/isolator", ERROR, "means to isolate battery and turbine")
            .why(
                    "Nobody can work on wires that cannot be made dead. The battery is never dead by itself, the turbine not"
                            + " while water runs.")
            .formula(
                    "a switch or breaker, or another means stated, on both sides of the bus; a switch that may not break load is"
                            + " no means while current flows")
            .judged("as built")
            .source(
                    "IEC 60364-5-53 (isolation and switching: clause 536 or 537 by issue, from memory), IEC 60947-3 (switches: utilisation category tells what they"
                            + " break); IEC 62485-2 clause 5 (battery)")
            .passes("battery-isolated", "The battery can be isolated.")
            .fails("battery-not-isolated", "The battery cannot be isolated: its wires can never be worked on safely.")
            .passes("turbine-isolated", "The turbine's side can be isolated.")
            .fails("turbine-not-isolated", "The turbine's side cannot be isolated.")
            .fails(
                    "not-under-load",
                    "{device} may not be opened while current flows: a direct-current arc burns on in it, and nothing else"
                            + " there makes the wires dead.")
            .judgeAll(Isolator::judge)
            .wayOut(
                    "load-break",
                    "A switch for direct current that breaks load in place of {device}.",
                    ChangesForText.only("not-under-load", Isolator::inItsPlace))
            .wayOut(
                    "fit",
                    "A switch for direct current there, to be opened with the water shut off.",
                    ChangesForText.except("not-under-load", FieldChanges.to(true)))
            .build();

    private Isolator() {}

    private static List<Outcome> judge(Judgement j) {
        Safeguards safeguards = DesignParts.safeguards(j);
        return j.all(
                () -> side(j, "battery", safeguards.batteryIsolator(), Place.BATTERY),
                () -> side(j, "turbine", safeguards.turbineIsolator(), Place.RECTIFIER));
    }

    private static Outcome side(Judgement j, String side, @Nullable Boolean stated, Place place) {
        List<Devices.Placed> means = Devices.all(j.design()).stream()
                .filter(d -> d.device().kind() != DeviceKind.FUSE && d.joins(place))
                .toList();
        Spot field = j.at("/safeguards/" + side + "-isolator").saying(side + "-isolated", side + "-not-isolated");
        if (means.stream().anyMatch(Isolator::breaksLoad)) {
            return field.holds(true);
        }
        if (means.isEmpty()) {
            return field.isSo(stated);
        }
        Spot spot = j.at(means.get(0).path() + "/breaks-load");
        spot.given(means.get(0).device().breaksLoad());
        return spot.with(means.get(0).name()).says("not-under-load");
    }

    /** A breaker opens under load by what it is; a switch only where it says so. */
    private static boolean breaksLoad(Devices.Placed device) {
        return device.isBreaker() || Boolean.TRUE.equals(device.device().breaksLoad());
    }

    private static Stream<Change> inItsPlace(Judgement j, Outcome.Fail failure) {
        return Stream.of(
                Change.of(failure.path(), true).with(failure.message().args().get(0)));
    }
}
