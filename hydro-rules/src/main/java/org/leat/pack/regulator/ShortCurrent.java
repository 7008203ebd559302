package org.leat.pack.regulator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Place;
import org.leat.pack.kit.Conductors;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.RunCapacity;
import org.leat.pack.kit.Runs;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;
import org.leat.plant.cases.CableDuty;
import org.leat.plant.numbers.CableNumbers;

/** What flows while the battery still takes everything behind a tracking or series regulator that has failed short. */
final class ShortCurrent {

    private static final String BRIDGE = "/rectifier/average-current";

    static final Rule RULE = Rule.of(
                    "regulator/short-current", ERROR, "currents behind a regulator that has failed short")
            .why(
                    "A regulator that fails short joins the bridge to the battery. The battery pulls the bridge down to its own"
                            + " voltage, the wheel slows, and winding, bridge and cables carry what no charge stage ever asked of"
                            + " them, until something opens.")
            .formula(
                    "currents at the battery's voltage ≤ winding's limit, bridge, cables as laid; or a device in every lead opens")
            .judged("regulator failed short, the nozzle set with the largest current")
            .source(COMMON_PRACTICE)
            .passes("winding-carries", "Should the regulator fail short, each lead carries {value}.")
            .fails(
                    "winding-overloaded",
                    "Should the regulator fail short, each lead carries {value}; the winding stands {limit}, and nothing in the"
                            + " leads surely opens.")
            .passes("bridge-carries", "Should the regulator fail short, the bridge carries {value}.")
            .fails(
                    "bridge-overloaded",
                    "Should the regulator fail short, the bridge carries {value} and is made for {limit}; nothing in the leads"
                            + " surely opens.")
            .passes("cable-carries", "Should the regulator fail short, the run {run} carries {value}.")
            .fails(
                    "cable-overloaded",
                    "Should the regulator fail short, the run {run} carries {value}; as laid it may carry {limit}, and nothing in"
                            + " the leads surely opens.")
            .passes(
                    "winding-carries-unopened",
                    "Should the regulator fail short and a nozzle be partly blocked, each lead carries up to {value} before {device}"
                            + " surely opens.")
            .fails(
                    "winding-overloaded-unopened",
                    "Should the regulator fail short and a nozzle be partly blocked, each lead carries up to {value} before {device}"
                            + " surely opens; the winding stands {limit}.")
            .passes(
                    "bridge-carries-unopened",
                    "Should the regulator fail short and a nozzle be partly blocked, the bridge carries up to {value} before"
                            + " {device} surely opens.")
            .fails(
                    "bridge-overloaded-unopened",
                    "Should the regulator fail short and a nozzle be partly blocked, the bridge carries up to {value} before"
                            + " {device} surely opens and is made for {limit}.")
            .passes(
                    "cable-carries-unopened",
                    "Should the regulator fail short and a nozzle be partly blocked, the run {run} carries up to {value} before"
                            + " {device} surely opens.")
            .fails(
                    "cable-overloaded-unopened",
                    "Should the regulator fail short and a nozzle be partly blocked, the run {run} carries up to {value} before"
                            + " {device} surely opens; as laid it may carry {limit}.")
            .notApplicable("one-node", "Not judged: no tracking or series regulator stands between bridge and battery.")
            .judgeAll(ShortCurrent::judge)
            .leastWayOut(
                    "bridge",
                    "A bridge for {rating}.",
                    FieldChanges.onlyAt(
                            BRIDGE,
                            FieldChanges.raised(
                                    "A", ElectricCurrent.class, 10, 15, 25, 35, 50, 75, 100, 150, 200, 300)))
            .leastWayOut("thicker", Conductors.THICKER, ShortCurrent::thicker)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .advice(
                    "fuse",
                    "A fuse in each lead between alternator and bridge that carries what the turbine gives and opens below what"
                            + " the winding stands.")
            .build();

    private ShortCurrent() {}

    /**
     * What flows for ever on a nozzle set: with a device in the leads no more than just does not open it, for a nozzle partly blocked
     * makes any current below that of the whole one.
     *
     * @param failed on the set
     * @param device in the leads that opens at the whole flow; null where none does
     */
    private record SustainedShort(RegulatorFailedShort failed, Devices.@Nullable Placed device) {

        static SustainedShort of(Judgement j, RegulatorFailedShort failed) {
            Devices.Placed first = Devices.firstInLeads(j.design());
            return new SustainedShort(
                    failed, first != null && failed.phaseCurrent() >= first.surelyOpens() ? first : null);
        }

        double phaseCurrent() {
            return device == null ? failed.phaseCurrent() : device.surelyOpens();
        }

        double direct() {
            return device == null
                    ? failed.chargingCurrent()
                    : failed.chargingCurrent() * device.surelyOpens() / failed.phaseCurrent();
        }

        Spot spot(Spot at, String passes, String fails) {
            Spot spot = at.during(failed);
            return device == null
                    ? spot.saying(passes, fails)
                    : spot.with(device.name()).saying(passes + "-unopened", fails + "-unopened");
        }
    }

    private static List<Outcome> judge(Judgement j) {
        List<SustainedShort> all = j.solved().regulatorFailedShort().stream()
                .map(failed -> SustainedShort.of(j, failed))
                .toList();
        if (all.isEmpty()) {
            return List.of(j.at("/regulator").says("one-node"));
        }
        SustainedShort most = Worst.most(all, SustainedShort::phaseCurrent);
        SustainedShort mostDirect = Worst.most(all, SustainedShort::direct);
        List<Supplier<Outcome>> questions = new ArrayList<>();
        questions.add(() -> winding(j, most));
        questions.add(() -> bridge(j, mostDirect));
        for (CableNumbers cable : j.numbers().cables()) {
            if (cable.joins(Place.ALTERNATOR)) {
                questions.add(() -> cable(j, cable, most, most.phaseCurrent()));
            } else if (cable.joins(Place.RECTIFIER, Place.REGULATOR)
                    || cable.joins(Place.RECTIFIER, Place.BATTERY)
                    || cable.joins(Place.REGULATOR, Place.BATTERY)) {
                questions.add(() -> cable(j, cable, mostDirect, mostDirect.direct()));
            }
        }
        return j.all(questions);
    }

    private static Outcome winding(Judgement j, SustainedShort fault) {
        return fault.spot(j.at("/alternator/current-limit"), "winding-carries", "winding-overloaded")
                .atMost(fault.phaseCurrent(), j.numbers().alternator().currentLimit(), CURRENT);
    }

    private static Outcome bridge(Judgement j, SustainedShort fault) {
        return fault.spot(j.at(BRIDGE), "bridge-carries", "bridge-overloaded")
                .atMost(fault.direct(), j.numbers().rectifier().averageCurrentRating(), CURRENT);
    }

    private static Outcome cable(Judgement j, CableNumbers cable, SustainedShort fault, double current) {
        Spot spot = fault.spot(j.at(cable.path() + "/conductor/area"), "cable-carries", "cable-overloaded")
                .with(Runs.arg("run", j.design(), cable));
        CableDuty.Carries carries = new CableDuty.Carries(
                cable, current, cable.joins(Place.ALTERNATOR), fault.failed().id());
        return spot.atMost(current, RunCapacity.capacity(j, spot, carries), CURRENT);
    }

    private static Stream<Change> thicker(Judgement j, Outcome.Fail failure) {
        return failure.says("cable-overloaded") || failure.says("cable-overloaded-unopened")
                ? Conductors.thicker(j, failure)
                : Stream.empty();
    }
}
