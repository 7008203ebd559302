package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.AREA;
import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Cable;
import org.leat.design.CableInsulation;
import org.leat.design.Place;
import org.leat.design.TripCurve;
import org.leat.pack.kit.Conductors;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.DeviceSizes;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.Runs;
import org.leat.plant.duties.FaultClearing;
import org.leat.plant.numbers.CableNumbers;
import org.leat.quantity.Si;

/** Conductors at the battery until the device clears a short circuit. */
final class ShortTime {

    static final Rule RULE = Rule.of(
                    "protection/short-time", ERROR, "conductors at the battery until the device clears a short circuit")
            .why("Until the fuse opens the conductor takes all the heat of the fault. A thin cable behind a large fuse"
                    + " loses its insulation first; a current too small for the fuse goes on for ever.")
            .formula(
                    "S ≥ I √t / k, I = V_full/(R_battery + loop); gG fuse: t = 0.1 s at the gate of its rating and at the same I²t"
                            + " above, 5 s down to the gate for 5 s; breaker: 0.1 s from the multiple of its curve, nothing sure below it")
            .judged("short circuit at the far end of each run at the battery")
            .source("IEC 60364-4-43 clause 434.5.2, k from table 43A")
            .source(
                    "IEC 60269-1 gates of gG fuses by size: 50 A 250 A for 5 s and 610 A for 0.1 s, 200 A 1250 A and 3420 A (from memory)")
            .source(
                    "IEC 60898-1 table 7 and IEC 60898-2: instantaneous trip of curves B and C on direct current, Z and D in"
                            + " proportion, IEC 60947-2 (from memory)")
            .passes(
                    "stands-it",
                    "A short circuit at the far end of the run {run} makes {fault}; until {device} opens that takes {limit}"
                            + " of conductor.")
            .fails(
                    "too-thin",
                    "A short circuit at the far end of the run {run} makes {fault}; until {device} opens that takes {limit}"
                            + " of conductor, not {value}.")
            .fails(
                    "never-clears",
                    "A short circuit at the far end of the run {run} makes only {fault}: {device} does not surely open within"
                            + " five seconds.")
            .open(
                    "let-through",
                    "A short circuit at the far end of the run {run} makes {fault}, more than it stands for a tenth of a"
                            + " second: what {device} lets through before it opens only its maker can say.")
            .notApplicable("no-device", "Not judged: no run at the battery has a fuse or breaker.")
            .judgeAll(ShortTime::judge)
            .leastWayOut("thicker", Conductors.THICKER, Conductors::thicker)
            .wayOut("smaller-device", "A device of {rating}, where what flows allows it.", ShortTime::smallerDevice)
            .build();

    private ShortTime() {}

    private static List<Outcome> judge(Judgement j) {
        List<CableNumbers> runs = j.numbers().cables().stream()
                .filter(run -> device(j, run) != null)
                .toList();
        return j.eachOr(j.at("/protection").says("no-device"), runs, run -> judge(j, run));
    }

    private static Devices.@Nullable Placed device(Judgement j, CableNumbers run) {
        Devices.Placed device = Devices.in(j.design(), j.design().cables().get(run.index()));
        return device != null && device.joins(Place.BATTERY) ? device : null;
    }

    private static Outcome judge(Judgement j, CableNumbers run) {
        Cable cable = j.design().cables().get(run.index());
        Devices.Placed device = Objects.requireNonNull(device(j, run));
        Spot at = j.at(run.path() + "/conductor/area");
        CableInsulation insulation = at.given(
                run.path() + "/installation/insulation",
                DesignParts.installation(cable).insulation());
        boolean breaker = device.isBreaker();
        TripCurve curve = device.device().tripCurve();
        if (breaker) {
            at.given(device.path() + "/trip-curve", curve);
        }
        double current = j.numbers().battery().faultCurrent(run.loopResistance());
        FaultClearing clearing = FaultClearing.of(
                current, device.device(), curve, insulation, cable.conductor().material());
        Spot spot = at.with(Runs.arg("run", cable), device.name()).with("fault", current, CURRENT);
        if (!clearing.cleared()) {
            return spot.says("never-clears");
        }
        int parallel =
                cable.conductor().parallel() == null ? 1 : cable.conductor().parallel();
        Comparison comparison =
                Comparison.atLeast(Si.of(cable.conductor().area()) * parallel, spot.known(clearing.leastArea()), AREA);
        // a breaker may well open sooner than it must, but how much it lets through only its maker can say
        return breaker && !comparison.holds() ? spot.open(device.path(), "let-through") : spot.compare(comparison);
    }

    private static Stream<Change> smallerDevice(Judgement j, Outcome.Fail failure) {
        Devices.Placed device = Devices.in(j.design(), Runs.at(j.design(), failure.path()));
        if (device == null) {
            return Stream.empty();
        }
        double now = device.rating();
        return DeviceSizes.upTo(now)
                .filter(rating -> rating < now)
                .map(rating -> DeviceSizes.rated(device.ratingPath(), rating));
    }
}
