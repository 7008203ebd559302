package org.leat.readings;

import java.util.Arrays;
import java.util.List;
import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.BridgeWaveform;
import org.leat.law.Gravity;
import org.leat.plant.Plant;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.solve.FalsePosition;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solved.OperatingPoint;
import org.leat.plant.solved.WaterSide;
import org.leat.plant.solved.WaterSide.SectionFlow;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

/**
 * What a plant, sound or with a fault, lets its builder read. Values by {@link Channel#slot()}, SI; not a number where such a thing
 * is not told by the plant.
 */
final class ReadingModel {

    /** Of the speed with open leads, a share. */
    private static final double SPEED_TOLERANCE = 1e-9;

    private ReadingModel() {}

    /** {@return whether the plant has a dump load that holds the bus without its battery} */
    static boolean holdsWithoutBattery(PlantNumbers numbers) {
        DumpLoadNumbers dump = numbers.dumpLoad();
        return dump != null && dump.side() == DumpSide.BRIDGE;
    }

    /** {@return standing pressure at the nozzle axis, Pa} */
    static double standing(Condition condition) {
        return condition.plant().numbers().water().specificWeight() * condition.standingHead();
    }

    /** {@return what is read on a nozzle set} */
    static double[] of(Condition condition, NozzleGroup nozzles) {
        double[] values = new double[Channel.SLOTS];
        Arrays.fill(values, Double.NaN);
        Plant plant = condition.plant();
        PlantNumbers numbers = plant.numbers();
        values[Channel.slot(LoadState.SHUT, ReadingKind.STANDING_PRESSURE)] = standing(condition);
        Running running = plant.running(asChanged(numbers, nozzles));
        WaterSide water = running.water();
        for (LoadState state : List.of(LoadState.OPEN, LoadState.DUMP, LoadState.BUS)) {
            water(values, state, condition, water);
        }
        RunnerCharacteristic runner =
                new RunnerCharacteristic(numbers.runner(), numbers.water().density(), water);
        openLeads(values, condition, runner);
        onDump(values, condition, running, runner);
        onBus(values, condition, running, runner);
        return values;
    }

    /** The set of that name as the changed plant has it. */
    private static NozzleGroup asChanged(PlantNumbers numbers, NozzleGroup nozzles) {
        for (NozzleGroup set : numbers.nozzles().sets()) {
            if (set.name().equals(nozzles.name())) {
                return set;
            }
        }
        return nozzles;
    }

    private static void water(double[] values, LoadState state, Condition condition, WaterSide water) {
        double flow = water.flow();
        values[Channel.slot(state, ReadingKind.FLOW)] = flow;
        values[Channel.slot(state, ReadingKind.INTAKE_FLOW)] = flow + condition.leak();
        values[Channel.slot(state, ReadingKind.RUNNING_PRESSURE)] =
                water.nodes().get(water.nodes().size() - 1).pressure();
        values[Channel.slot(state, ReadingKind.MIDWAY_PRESSURE)] = midway(condition, water);
    }

    /** Pressure half-way along the pipe: what is lost above, a pinch below it left out. */
    private static double midway(Condition condition, WaterSide water) {
        PlantNumbers numbers = condition.plant().numbers();
        double left = numbers.penstock().length() / 2;
        double head = numbers.site().grossHead() - water.screenLoss();
        List<SectionNumbers> sections = numbers.penstock().sections();
        for (int i = 0; i < sections.size(); i++) {
            SectionNumbers section = sections.get(i);
            SectionFlow flow = water.sections().get(i);
            double velocityHead = flow.velocity() * flow.velocity() / (2 * Gravity.STANDARD);
            double pinch = i == sections.size() - 1 ? condition.pinch() * velocityHead : 0;
            double share = Math.min(1, left / section.length());
            head -= share * (flow.frictionLoss() + flow.fittingsLoss() - pinch);
            left -= section.length();
            if (left <= 0) {
                double elevation = section.fromElevation() + share * (section.toElevation() - section.fromElevation());
                return numbers.water().specificWeight() * (head - elevation - velocityHead);
            }
        }
        return Double.NaN;
    }

    private static void speed(double[] values, LoadState state, PlantNumbers numbers, double speed) {
        AlternatorNumbers alternator = numbers.alternator();
        values[Channel.slot(state, ReadingKind.SPEED)] = speed;
        values[Channel.slot(state, ReadingKind.FREQUENCY)] =
                alternator.polePairs() * speed * alternator.gearRatio() / (2 * Math.PI);
    }

    private static void openLeads(double[] values, Condition condition, RunnerCharacteristic runner) {
        PlantNumbers numbers = condition.plant().numbers();
        AlternatorNumbers alternator = numbers.alternator();
        double gear = alternator.gearRatio();
        double runaway = runner.runawaySpeed();
        double atRest = runner.torque(0) - gear * alternator.noLoad().at(0);
        double atRunaway = -gear * alternator.noLoad().at(runaway * gear);
        double speed = atRest <= 0 || atRunaway >= 0
                ? atRest <= 0 ? 0 : runaway
                : FalsePosition.between(
                        w -> runner.torque(w) - gear * alternator.noLoad().at(w * gear),
                        0,
                        atRest,
                        runaway,
                        atRunaway,
                        SPEED_TOLERANCE);
        speed(values, LoadState.OPEN, numbers, speed);
        values[Channel.slot(LoadState.OPEN, ReadingKind.LEAD_VOLTS)] =
                condition.meterFactor() * alternator.peakLineVoltage(speed * gear) / Math.sqrt(2);
        // a winding that is open leaves two of the three pairs dead
        values[Channel.slot(LoadState.OPEN, ReadingKind.LEAD_SPREAD)] =
                condition.bridge() == BridgeFault.PHASE_OPEN ? 1 : 0;
    }

    private static void onDump(double[] values, Condition condition, Running running, RunnerCharacteristic runner) {
        Plant plant = condition.plant();
        PlantNumbers numbers = plant.numbers();
        if (!holdsWithoutBattery(numbers) || condition.bridge() != BridgeFault.NONE) {
            return;
        }
        double speed;
        double volts;
        if (condition.dumpDead()) {
            speed = runner.runawaySpeed();
            volts = numbers.alternator()
                    .peakLineVoltage(speed * numbers.alternator().gearRatio());
        } else {
            int at = numbers.nozzles().sets().indexOf(running.nozzles());
            if (at < 0) {
                return;
            }
            BatteryFull full = plant.solve().batteryFull().get(at);
            speed = full.runnerSpeed();
            volts = full.lastingVoltage();
        }
        speed(values, LoadState.DUMP, numbers, speed);
        values[Channel.slot(LoadState.DUMP, ReadingKind.BRIDGE_VOLTS)] = volts;
    }

    private static void onBus(double[] values, Condition condition, Running running, RunnerCharacteristic runner) {
        PlantNumbers numbers = condition.plant().numbers();
        OperatingPoint point = running.operatingPoint();
        AlternatorNumbers alternator = numbers.alternator();
        double speed = point.speed();
        double direct = point.directCurrent();
        double lead = point.phaseCurrent();
        double bridge = point.bus().bridge();
        if (condition.bridge() != BridgeFault.NONE) {
            BrokenRun broken = BrokenRun.of(numbers, running, runner, condition.bridge());
            speed = broken.speed();
            BridgeWaveform wave = broken.wave();
            direct = wave.directCurrent();
            lead = wave.phaseCurrentRms();
            bridge = wave.directVoltage();
        }
        speed(values, LoadState.BUS, numbers, speed);
        double peak = alternator.peakLineVoltage(speed * alternator.gearRatio());
        if (condition.bridge() == BridgeFault.NONE) {
            double held = bridge
                    + 2 * (numbers.rectifier().threshold() + numbers.rectifier().slopeResistance() * direct);
            values[Channel.slot(LoadState.BUS, ReadingKind.LEAD_VOLTS)] =
                    condition.meterFactor() * LeadVolts.rms(peak, held);
        }
        double current = numbers.regulator().kind() == RegulatorKind.TRACKING ? point.batteryCurrent() : direct;
        if (condition.bridge() != BridgeFault.NONE && point.directCurrent() > 0) {
            current = point.batteryCurrent() * direct / point.directCurrent();
        }
        double internal = numbers.battery().internalResistance();
        double resting = numbers.battery().restingVoltage();
        double taken =
                condition.batteryShare() * current - condition.dumpConductance() * (resting + internal * current);
        values[Channel.slot(LoadState.BUS, ReadingKind.BRIDGE_VOLTS)] = bridge;
        values[Channel.slot(LoadState.BUS, ReadingKind.BRIDGE_AMPS)] = direct;
        values[Channel.slot(LoadState.BUS, ReadingKind.BATTERY_AMPS)] = taken;
        values[Channel.slot(LoadState.BUS, ReadingKind.BATTERY_VOLTS)] = resting + internal * taken;
        values[Channel.slot(LoadState.BUS, ReadingKind.LEAD_AMPS)] = lead;
        if (alternator.thermalResistance().isKnown()) {
            double hottest = numbers.site().highestAirTemperature();
            double mean = 0.5 * (hottest + numbers.site().lowestAirTemperature());
            values[Channel.slot(LoadState.BUS, ReadingKind.WINDING_TEMPERATURE)] =
                    point.windingTemperature() - (hottest - mean);
        }
    }
}
