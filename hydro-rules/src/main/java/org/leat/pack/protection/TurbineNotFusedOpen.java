package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Place;
import org.leat.pack.kit.BridgeWindow;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.PartWord;
import org.leat.pack.kit.StandardSizes;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.RectifierNumbers;

/** What is left of the turbine's side when a device opens it. */
final class TurbineNotFusedOpen {

    static final Rule RULE = Rule.of(
                    "protection/turbine-not-fused-open",
                    ERROR,
                    "what is left of the turbine's side when a device opens it")
            .why("A blown fuse or an open switch takes the load off the turbine: the wheel runs away and what is still"
                    + " joined to it meets the full voltage for as long as water runs.")
            .formula(
                    "settled runaway voltage ≤ least rating of diodes, capacitor and regulator on the turbine's side; or a"
                            + " dump load there that takes everything")
            .judged("load lost through each device between turbine and battery, the nozzle set that runs fastest")
            .source(COMMON_PRACTICE)
            .passes(
                    "stands-it",
                    "When {device} opens, the turbine's side sees {value}; the weakest part there, the {part}, stands"
                            + " {limit}.")
            .fails(
                    "breaks-it",
                    "When {device} opens, the wheel runs away and its side sees {value}; the weakest part there, the {part},"
                            + " stands {limit}.")
            .passes("dump-holds", "When {device} opens, the dump load on the bridge's side holds the turbine.")
            .passes("winding-alone", "When {device} opens, nothing but the winding is left on the turbine's side.")
            .notApplicable("nothing-opens", "Not judged: no device opens the turbine's side.")
            .judgeAll(TurbineNotFusedOpen::judge)
            .advice(
                    "needed",
                    "Parts for {voltage} there, or a dump load on the bridge's side of the device that takes everything.",
                    StandardSizes.standing("voltage"))
            .build();

    private TurbineNotFusedOpen() {}

    private static List<Outcome> judge(Judgement j) {
        LoadLost worst = Worst.most(j.solved().loadLost(), LoadLost::directVoltage);
        return Devices.each(j, TurbineNotFusedOpen::onTheWay, "nothing-opens", device -> judge(j, device, worst));
    }

    private static boolean onTheWay(Devices.Placed device) {
        return device.joins(Place.ALTERNATOR)
                || (device.joins(Place.RECTIFIER) && !device.joins(Place.DUMP_LOAD))
                || (device.joins(Place.REGULATOR) && device.joins(Place.BATTERY));
    }

    /** {@return whether it is known that what stays joined to the turbine does not stand that a device opens} */
    static boolean breaksSomething(Judgement j, Devices.Placed device) {
        if (!onTheWay(device) || device.joins(Place.ALTERNATOR) || dumpHolds(j)) {
            return false;
        }
        double volts =
                Worst.most(j.solved().loadLost(), LoadLost::directVoltage).directVoltage();
        return parts(j, device).stream()
                .anyMatch(part -> part.rating() instanceof Amount.Known stands && volts > stands.value());
    }

    private static boolean dumpHolds(Judgement j) {
        return j.solved().batteryRemoved().stream().allMatch(removed -> removed.holder() == BusHolder.DUMP_LOAD);
    }

    private static Outcome judge(Judgement j, Devices.Placed device, LoadLost worst) {
        Spot spot = j.at(device.path()).during(worst).with(device.name());
        if (device.joins(Place.ALTERNATOR)) {
            return spot.says("winding-alone");
        }
        if (dumpHolds(j)) {
            return spot.says("dump-holds");
        }
        List<BridgeWindow.RatedPart> parts = parts(j, device);
        BridgeWindow.RatedPart weakest = parts.stream()
                .min(Comparator.comparingDouble(part -> spot.known(part.rating())))
                .orElseThrow();
        return spot.with(Arg.phrase("part", weakest.part()))
                .atMost(worst.directVoltage(), spot.known(weakest.rating()), VOLTAGE);
    }

    /** What stays joined to the turbine. */
    private static List<BridgeWindow.RatedPart> parts(Judgement j, Devices.Placed device) {
        RectifierNumbers bridge = j.numbers().rectifier();
        List<BridgeWindow.RatedPart> parts = new ArrayList<>();
        parts.add(new BridgeWindow.RatedPart(PartWord.DIODES, bridge.reverseVoltageRating()));
        if (bridge.capacitance() > 0) {
            parts.add(new BridgeWindow.RatedPart(PartWord.CAPACITOR, bridge.capacitorVoltageRating()));
        }
        if (device.joins(Place.REGULATOR) && device.joins(Place.BATTERY)) {
            parts.add(new BridgeWindow.RatedPart(
                    PartWord.REGULATOR, j.numbers().regulator().inputVoltageLimit()));
        }
        return parts;
    }
}
