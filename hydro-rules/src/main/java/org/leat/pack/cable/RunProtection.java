package org.leat.pack.cable;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Cable;
import org.leat.design.Place;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.Conductors;
import org.leat.pack.kit.DeviceSizes;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.HighestBusVoltage;
import org.leat.pack.kit.RunCapacity;
import org.leat.pack.kit.Runs;
import org.leat.plant.cases.CableDuty;
import org.leat.plant.loads.DeviceRatings;
import org.leat.plant.numbers.CableNumbers;

/** A fuse or breaker in every run at the battery, between what flows and what the cable carries. */
final class RunProtection {

    static final Rule RULE = Rule.of("cable/protection", ERROR, "a fuse or breaker in every run at the battery")
            .why("A battery drives thousands of amperes into a fault. A run without a fuse, or with one larger than the"
                    + " cable stands, is a heating wire through the house.")
            .formula(
                    "I_B ≤ I_n ≤ I_z and I_2 ≤ 1.45 I_z: lasting current, rating, capacity as laid, current that surely"
                            + " opens the device")
            .judged(
                    "each run that ends at the battery, at its greatest lasting current; above 60 V d.c. runs to loads that begin"
                            + " elsewhere are asked for a device")
            .source("IEC 60364-4-43 clause 433.1")
            .source("IEC 61140: extra-low voltage, 60 V ripple-free direct (from memory)")
            .source(
                    "operating currents: breakers 1.45 I_n, IEC 60898-1; gG fuses 1.6 I_n from 16 A, IEC 60269 (from memory)")
            .passes("protected", "The run {run} is protected by {device} of {value} ({current} flows).")
            .fails("none", "The run {run} has neither fuse nor breaker.")
            .fails(
                    "too-small",
                    "The run {run} carries {current}; its {device} of {value} opens in service ({limit} would fit).")
            .fails(
                    "too-large",
                    "The {device} of {value} lets the run {run} burn before it opens ({limit} would fit, {current} flows).")
            .fails(
                    "cable-too-thin",
                    "No rating fits the run {run}: {current} flows, and a device that protects the cable has {limit}.")
            .fails(
                    "loads-none",
                    "The bus reaches {voltage}, more than extra-low voltage, and the run {run} has neither fuse nor breaker.")
            .open("not-loaded", RunCapacity.NOT_LOADED)
            .open(
                    "loads-unprotected",
                    "Cannot be judged: the bus reaches {voltage}, more than extra-low voltage, and no device in the run {run} is told.")
            .notApplicable("none-at-battery", "Not judged: no run ends at the battery.")
            .judgeAll(RunProtection::judge)
            .leastWayOut("other-rating", "A device of {rating}.", RunProtection::otherRating)
            .leastWayOut("thicker", Conductors.THICKER, RunProtection::thicker)
            .wayOut(
                    "add-fuse",
                    "A fuse for direct current of {rating} in the run {run}, at the battery's end.",
                    ChangesForText.only("none", RunProtection::addFuse))
            .wayOut(
                    "add-loads-fuse",
                    "A fuse for direct current of {rating} in the run {run}, at the end that feeds it.",
                    ChangesForText.only("loads-none", RunProtection::addFuse))
            .lastAdvice(
                    "device-of-run",
                    "A fuse or breaker for direct current in the run {run}, at the end that feeds it, for no more than its"
                            + " conductors carry.",
                    ChangesForText.only(
                            "loads-none",
                            (j, failure) -> Stream.of(
                                    Change.advice().with(Runs.arg("run", Runs.at(j.design(), failure.path()))))))
            .build();

    /** V, ripple-free direct. */
    private static final double EXTRA_LOW = 60;

    /** Of what flows for ever, for a device that does not tire: NEC 210.20(A) and 215.3. */
    private static final double LASTING = 1.25;

    private RunProtection() {}

    private static List<Outcome> judge(Judgement j) {
        List<CableDuty> all = j.solved().cableDuties();
        j.at("/cables").given(all.isEmpty() ? null : all);
        j.at("/protection").given(j.design().protection());
        List<CableDuty> duties = all.stream()
                .filter(d -> d.cable().joins(Place.BATTERY)
                        || (d.cable().joins(Place.LOADS) && device(j, d.cable()) != null))
                .toList();
        List<Outcome> outcomes = new ArrayList<>(j.each(duties, duty -> judge(j, duty)));
        outcomes.addAll(ofLoads(j, all));
        return outcomes.isEmpty() ? List.of(j.at("/cables").says("none-at-battery")) : outcomes;
    }

    /** A run to loads that leads from elsewhere than the battery, on a bus above extra-low voltage: what protects it must be told. */
    private static List<Outcome> ofLoads(Judgement j, List<CableDuty> all) {
        HighestBusVoltage highest = HighestBusVoltage.of(j.solved(), BusNode.BATTERY);
        return all.stream()
                .map(CableDuty::cable)
                .filter(run -> run.joins(Place.LOADS) && !run.joins(Place.BATTERY))
                .filter(run -> highest.volts() > EXTRA_LOW && device(j, run) == null)
                .map(run -> {
                    Spot spot = j.at(run.path())
                            .during(highest.situation())
                            .with(Runs.arg("run", j.design(), run))
                            .with("voltage", highest.volts(), VOLTAGE);
                    // an empty list says that there are none
                    return j.design().devices().isEmpty()
                            ? spot.says("loads-none")
                            : spot.open("/protection", "loads-unprotected");
                })
                .toList();
    }

    private static Devices.@Nullable Placed device(Judgement j, CableNumbers run) {
        return Devices.in(j.design(), j.design().cables().get(run.index()));
    }

    private static Outcome judge(Judgement j, CableDuty duty) {
        CableNumbers run = duty.cable();
        Devices.Placed placed = device(j, run);
        if (placed == null) {
            return j.at(run.path()).with(Runs.arg("run", j.design(), run)).says("none");
        }
        Spot at = j.at(placed.ratingPath());
        if (duty instanceof CableDuty.NotLoaded) {
            return at.says("not-loaded");
        }
        CableDuty.Carries carries = RunCapacity.carries(at, duty);
        Spot spot = at.during(carries.during());
        double current = carries.current();
        double rating = placed.rating();
        double greatest = DeviceRatings.greatestProtecting(
                placed.device().kind(), rating, RunCapacity.capacity(j, spot, carries));
        boolean thin = greatest < current;
        return spot.with(Runs.arg("run", j.design(), run), placed.name())
                .with("current", current, CURRENT)
                .saying("protected", thin ? "cable-too-thin" : rating < current ? "too-small" : "too-large")
                .compare(
                        thin
                                ? Comparison.atMost(current, greatest, CURRENT)
                                : Comparison.within(rating, current, greatest, CURRENT));
    }

    private static Stream<Change> otherRating(Judgement j, Outcome.Fail failure) {
        Comparison comparison = failure.comparison();
        return comparison == null || failure.says("cable-too-thin")
                ? Stream.empty()
                : DeviceSizes.from(comparison.low())
                        .filter(rating -> rating <= comparison.high())
                        .map(rating -> DeviceSizes.rated(failure.path(), rating));
    }

    /** Where no rating fits: conductors that carry what flows, and that the device protects. */
    private static Stream<Change> thicker(Judgement j, Outcome.Fail failure) {
        return failure.says("cable-too-thin")
                ? j.solved().cableDuties().stream()
                        .map(CableDuty::cable)
                        .filter(run -> isBehind(j, run, failure.path()))
                        .limit(1)
                        .flatMap(run -> Conductors.thicker(j.design(), run))
                : Stream.empty();
    }

    private static boolean isBehind(Judgement j, CableNumbers run, String rating) {
        Devices.Placed placed = device(j, run);
        return placed != null && rating.equals(placed.ratingPath());
    }

    /** Ratings that carry for ever what flows come first: a fuse at its limit day and night tires. */
    private static Stream<Change> addFuse(Judgement j, Outcome.Fail failure) {
        Cable cable = Runs.at(j.design(), failure.path());
        double lasting = LASTING * carried(j, failure.path());
        List<Double> ratings = DeviceRatings.standard();
        return Stream.concat(
                        ratings.stream().filter(rating -> rating >= lasting),
                        ratings.stream().filter(rating -> rating < lasting))
                .map(rating -> DeviceSizes.withFuse(
                                j.design(), "fuse of the run " + Runs.name(cable), cable.from(), cable.to(), rating)
                        .with(Runs.arg("run", cable)));
    }

    private static double carried(Judgement j, String path) {
        return j.solved().cableDuties().stream()
                .filter(duty -> duty.cable().path().equals(path) && duty instanceof CableDuty.Carries)
                .mapToDouble(duty -> ((CableDuty.Carries) duty).current())
                .max()
                .orElse(0);
    }
}
