package org.leat.pack.regulator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
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
            .passes(
                    "cleared",
                    "Should the regulator fail short, each lead carries {value}; {device} surely opens from {opens} on.")
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
            .notApplicable("one-node", "Not judged: no tracking or series regulator stands between bridge and battery.")
            .judgeAll(ShortCurrent::judge)
            .leastWayOut("bridge", "A bridge for {rating}.", ShortCurrent::largerBridge)
            .leastWayOut("thicker", "Conductors of {area:mm²}.", ShortCurrent::thicker)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .advice(
                    "fuse",
                    "A fuse in each lead between alternator and bridge that carries what the turbine gives and opens below what"
                            + " the winding stands.",
                    (j, failure) -> Stream.of(Change.advice()))
            .build();

    private ShortCurrent() {}

    private static List<Outcome> judge(Judgement j) {
        List<RegulatorFailedShort> all = j.solved().regulatorFailedShort();
        if (all.isEmpty()) {
            return List.of(j.at("/regulator").says("one-node"));
        }
        List<Supplier<Outcome>> questions = new ArrayList<>();
        List<RegulatorFailedShort> cleared = all.stream()
                .filter(failed ->
                        Devices.inLeads(j.design()).anyMatch(device -> failed.phaseCurrent() >= device.surelyOpens()))
                .toList();
        if (!cleared.isEmpty()) {
            questions.add(() -> cleared(j, Worst.least(cleared, RegulatorFailedShort::phaseCurrent)));
        }
        List<RegulatorFailedShort> staying =
                all.stream().filter(failed -> !cleared.contains(failed)).toList();
        if (!staying.isEmpty()) {
            staying(j, staying, questions);
        }
        return j.all(questions);
    }

    private static void staying(Judgement j, List<RegulatorFailedShort> staying, List<Supplier<Outcome>> questions) {
        RegulatorFailedShort most = Worst.most(staying, RegulatorFailedShort::phaseCurrent);
        RegulatorFailedShort mostDirect = Worst.most(staying, RegulatorFailedShort::chargingCurrent);
        questions.add(() -> winding(j, most));
        questions.add(() -> bridge(j, mostDirect));
        for (CableNumbers cable : j.numbers().cables()) {
            if (cable.joins(Place.ALTERNATOR)) {
                questions.add(() -> cable(j, cable, most, most.phaseCurrent()));
            } else if (cable.joins(Place.RECTIFIER, Place.REGULATOR)
                    || cable.joins(Place.RECTIFIER, Place.BATTERY)
                    || cable.joins(Place.REGULATOR, Place.BATTERY)) {
                questions.add(() -> cable(j, cable, mostDirect, mostDirect.chargingCurrent()));
            }
        }
    }

    private static Outcome cleared(Judgement j, RegulatorFailedShort failed) {
        Devices.Placed device = Devices.inLeads(j.design())
                .filter(one -> failed.phaseCurrent() >= one.surelyOpens())
                .findFirst()
                .orElseThrow();
        return j.at(device.path() + "/rated-current")
                .during(failed)
                .saying("cleared", "winding-overloaded")
                .with(device.name())
                .with("opens", device.surelyOpens(), CURRENT)
                .atLeast(failed.phaseCurrent(), device.surelyOpens(), CURRENT);
    }

    private static Outcome winding(Judgement j, RegulatorFailedShort failed) {
        Spot spot = j.at("/alternator/current-limit").during(failed);
        return spot.saying("winding-carries", "winding-overloaded")
                .atMost(
                        failed.phaseCurrent(),
                        spot.known(j.numbers().alternator().currentLimit()),
                        CURRENT);
    }

    private static Outcome bridge(Judgement j, RegulatorFailedShort failed) {
        Spot spot = j.at("/rectifier/average-current").during(failed);
        return spot.saying("bridge-carries", "bridge-overloaded")
                .atMost(
                        failed.chargingCurrent(),
                        spot.known(j.numbers().rectifier().averageCurrentRating()),
                        CURRENT);
    }

    private static Outcome cable(Judgement j, CableNumbers cable, RegulatorFailedShort failed, double current) {
        Spot spot = j.at(cable.path() + "/conductor/area").during(failed).with(Runs.arg("run", j.design(), cable));
        CableDuty.Carries carries = new CableDuty.Carries(cable, current, cable.joins(Place.ALTERNATOR), failed.id());
        return spot.saying("cable-carries", "cable-overloaded")
                .atMost(current, RunCapacity.capacity(j, spot, carries), CURRENT);
    }

    private static Stream<Change> largerBridge(Judgement j, Outcome.Fail failure) {
        return failure.says("bridge-overloaded")
                ? FieldChanges.raised("A", ElectricCurrent.class, 10, 15, 25, 35, 50, 75, 100, 150, 200, 300)
                        .of(j, failure)
                : Stream.empty();
    }

    private static Stream<Change> thicker(Judgement j, Outcome.Fail failure) {
        return failure.says("cable-overloaded") ? Conductors.thicker(j.design(), failure.path()) : Stream.empty();
    }
}
