package org.leat.pack.plausibility;

import static org.leat.quantity.QuantityKind.AREA;
import static org.leat.quantity.QuantityKind.CAPACITANCE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.FREQUENCY;
import static org.leat.quantity.QuantityKind.INDUCTANCE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RESISTANCE;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.TEMPERATURE;
import static org.leat.quantity.QuantityKind.THERMAL_RESISTANCE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.design.Alternator;
import org.leat.design.BatteryBank;
import org.leat.design.BatteryManagement;
import org.leat.design.Cable;
import org.leat.design.ChargeRegulator;
import org.leat.design.Design;
import org.leat.design.DumpLoad;
import org.leat.design.ElementPath;
import org.leat.design.Installation;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.design.NoLoadLoss;
import org.leat.design.ProtectiveDevice;
import org.leat.design.Rectifier;
import org.leat.design.Safeguards;
import org.leat.design.VehiclePack;
import org.leat.design.Ventilation;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** What is marked on electric parts: a slip in a limit passes every rule that asks whether the limit is kept. */
final class StatedElectricParts {

    private static final String VOLTS = "voltage rating";
    private static final String INPUT = "input voltage limit";
    private static final String AMPERES = "current rating";
    private static final String WATTS = "power rating";
    private static final double SECONDS_PER_HOUR = 3600;

    private StatedElectricParts() {}

    static void add(Design design, StatedList all) {
        alternator(design.alternator(), all);
        rectifier(design.rectifier(), all);
        cables(design.cables(), all);
        regulator(design.regulator(), all);
        dumpLoad(design.dumpLoad(), all);
        battery(design.battery(), all);
        inverter(design.inverter(), all);
        loads(design.loads(), all);
        protection(design.devices(), all);
        secondGuard(design.safeguards(), all);
    }

    private static void secondGuard(@Nullable Safeguards safeguards, StatedList all) {
        if (safeguards != null && safeguards.secondGuard() != null) {
            String at = "/safeguards/second-guard";
            all.add(at + "/trigger-voltage", INPUT, safeguards.secondGuard().triggerVoltage(), VOLTAGE);
            all.add(at + "/power", WATTS, safeguards.secondGuard().power(), POWER);
        }
    }

    private static void alternator(Alternator alternator, StatedList all) {
        String at = "/alternator";
        String winding = at + "/winding";
        all.add(
                winding + "/resistance-between-leads",
                "winding resistance",
                alternator.winding().resistanceBetweenLeads().value(),
                RESISTANCE);
        if (alternator.winding().inductanceBetweenLeads() != null) {
            all.add(
                    winding + "/inductance-between-leads",
                    "winding inductance",
                    alternator.winding().inductanceBetweenLeads().value(),
                    INDUCTANCE);
        }
        all.add(at + "/current-limit", AMPERES, alternator.currentLimit(), CURRENT);
        all.add(at + "/speed-limit", "limit of rotational speed", alternator.speedLimit(), ROTATIONAL_SPEED);
        all.add(at + "/frequency-limit", "limit of frequency", alternator.frequencyLimit(), FREQUENCY);
        all.add(at + "/thermal-resistance", "thermal resistance", alternator.thermalResistance(), THERMAL_RESISTANCE);
        NoLoadLoss loss = alternator.noLoadLoss();
        if (loss != null) {
            all.add(at + "/no-load-loss/speed", "speed", loss.speed(), ROTATIONAL_SPEED);
            all.add(at + "/no-load-loss/power", "no-load loss", loss.power(), POWER);
        }
    }

    private static void rectifier(@Nullable Rectifier bridge, StatedList all) {
        if (bridge == null) {
            return;
        }
        String at = "/rectifier";
        all.add(at + "/repetitive-peak-reverse-voltage", VOLTS, bridge.repetitivePeakReverseVoltage(), VOLTAGE);
        all.add(at + "/average-current", AMPERES, bridge.averageCurrent(), CURRENT);
        all.add(at + "/drop-per-diode", "drop of a diode", bridge.dropPerDiode(), VOLTAGE);
        all.add(at + "/slope-resistance", "slope of a diode", bridge.slopeResistance(), RESISTANCE);
        all.add(at + "/junction-to-air", "thermal resistance", bridge.junctionToAir(), THERMAL_RESISTANCE);
        all.add(at + "/junction-limit", "junction limit", bridge.junctionLimit(), TEMPERATURE);
        all.add(at + "/capacitance", "capacitance", bridge.capacitance(), CAPACITANCE);
        all.add(at + "/capacitor-voltage", INPUT, bridge.capacitorVoltage(), VOLTAGE);
    }

    private static void cables(List<Cable> cables, StatedList all) {
        for (int i = 0; i < cables.size(); i++) {
            String at = ElementPath.item("/cables", cables, i);
            all.add(at + "/rated-voltage", VOLTS, cables.get(i).ratedVoltage(), VOLTAGE);
            Installation laid = cables.get(i).installation();
            if (laid != null) {
                all.add(at + "/installation/ambient", "ambient temperature", laid.ambient(), TEMPERATURE);
            }
        }
    }

    private static void regulator(@Nullable ChargeRegulator regulator, StatedList all) {
        if (regulator == null) {
            return;
        }
        String at = "/regulator";
        all.add(at + "/input-voltage-limit", INPUT, regulator.inputVoltageLimit(), VOLTAGE);
        all.add(at + "/current-rating", AMPERES, regulator.currentRating(), CURRENT);
        all.add(at + "/absorption-voltage", INPUT, regulator.absorptionVoltage(), VOLTAGE);
        all.add(at + "/float-voltage", INPUT, regulator.floatVoltage(), VOLTAGE);
        all.add(at + "/equalising-voltage", INPUT, regulator.equalisingVoltage(), VOLTAGE);
        all.add(at + "/cut-off-voltage", INPUT, regulator.cutOffVoltage(), VOLTAGE);
        all.add(at + "/standing-power", "own consumption", regulator.standingPower(), POWER);
    }

    private static void dumpLoad(@Nullable DumpLoad dump, StatedList all) {
        if (dump == null) {
            return;
        }
        String at = "/dump-load";
        all.add(at + "/resistance", "resistance of a dump load", dump.resistance(), RESISTANCE);
        all.add(at + "/resistance-hot", "resistance of a dump load", dump.resistanceHot(), RESISTANCE);
        all.add(at + "/power-rating", WATTS, dump.powerRating(), POWER);
        all.add(at + "/rated-voltage", INPUT, dump.ratedVoltage(), VOLTAGE);
        all.add(at + "/trigger-voltage", INPUT, dump.triggerVoltage(), VOLTAGE);
        all.add(at + "/switch-rating", AMPERES, dump.switchRating(), CURRENT);
        all.add(at + "/fuse", AMPERES, dump.fuse(), CURRENT);
        all.add(at + "/fuse-direct-voltage", VOLTS, dump.fuseDirectVoltage(), VOLTAGE);
    }

    private static void battery(BatteryBank bank, StatedList all) {
        String at = "/battery";
        all.add(at + "/internal-resistance", "resistance of a battery", bank.internalResistance(), RESISTANCE);
        all.add(at + "/charge-current-limit", AMPERES, bank.chargeCurrentLimit(), CURRENT);
        all.add(at + "/charge-voltage-limit", INPUT, bank.chargeVoltageLimit(), VOLTAGE);
        all.add(at + "/lowest-temperature", "ambient temperature", bank.lowestTemperature(), TEMPERATURE);
        charging(bank, all);
        Ventilation air = bank.ventilation();
        if (air != null) {
            all.add(at + "/ventilation/opening-area", "opening of a vent", air.openingArea(), AREA);
            all.add(at + "/ventilation/spark-distance", "spark distance", air.sparkDistance(), LENGTH);
        }
        BatteryManagement management = bank.management();
        if (management != null) {
            all.add(at + "/management/current-limit", AMPERES, management.currentLimit(), CURRENT);
            all.add(at + "/management/voltage-rating", INPUT, management.voltageRating(), VOLTAGE);
            all.add(at + "/management/opens-above", INPUT, management.opensAbove(), VOLTAGE);
        }
    }

    /** The limits of charging against the size of the bank: a limit far too wide passes whatever the turbine does to it. */
    private static void charging(BatteryBank bank, StatedList all) {
        if (bank.chargeCurrentLimit() != null) {
            double perHour = Si.of(bank.chargeCurrentLimit()) * SECONDS_PER_HOUR / Si.of(bank.capacity());
            all.add(
                    "/battery/charge-current-limit",
                    "charge current over capacity per hour",
                    perHour,
                    QuantityKind.RATIO);
        }
        if (bank.chargeVoltageLimit() != null) {
            double perCell = Si.of(bank.chargeVoltageLimit()) / bank.cellsInSeries();
            all.add("/battery/charge-voltage-limit", "charge voltage over cells in series", perCell, VOLTAGE);
        }
    }

    private static void inverter(@Nullable Inverter inverter, StatedList all) {
        if (inverter == null) {
            return;
        }
        String at = "/inverter";
        if (inverter.inputVoltage() != null) {
            all.add(at + "/input-voltage/from", INPUT, inverter.inputVoltage().from(), VOLTAGE);
            all.add(at + "/input-voltage/to", INPUT, inverter.inputVoltage().to(), VOLTAGE);
        }
        all.add(at + "/input-voltage-limit", INPUT, inverter.inputVoltageLimit(), VOLTAGE);
        all.add(at + "/cut-off-voltage", INPUT, inverter.cutOffVoltage(), VOLTAGE);
        all.add(at + "/continuous-power", WATTS, inverter.continuousPower(), POWER);
        all.add(at + "/surge-power", WATTS, inverter.surgePower(), POWER);
        all.add(at + "/standing-power", "own consumption", inverter.standingPower(), POWER);
    }

    private static void loads(List<Load> loads, StatedList all) {
        for (int i = 0; i < loads.size(); i++) {
            String at = ElementPath.item("/loads", loads, i);
            all.add(at + "/power", "power of a load", loads.get(i).power(), POWER);
            VehiclePack pack = loads.get(i).pack();
            if (pack != null) {
                all.add(at + "/pack/energy", "energy of a pack", pack.energy(), QuantityKind.ENERGY);
                all.add(at + "/pack/cells-in-series", "cells of a pack", pack.cellsInSeries(), QuantityKind.RATIO);
            }
        }
    }

    private static void protection(List<ProtectiveDevice> devices, StatedList all) {
        for (int i = 0; i < devices.size(); i++) {
            String at = ElementPath.item("/protection", devices, i);
            ProtectiveDevice device = devices.get(i);
            all.add(at + "/rated-current", AMPERES, device.ratedCurrent(), CURRENT);
            all.add(at + "/direct-voltage", VOLTS, device.directVoltage(), VOLTAGE);
            all.add(at + "/breaking-capacity", "breaking capacity", device.breakingCapacity(), CURRENT);
        }
    }
}
