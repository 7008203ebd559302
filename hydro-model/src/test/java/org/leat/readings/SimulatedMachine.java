package org.leat.readings;

import java.nio.file.Path;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.CircuitSimulator;
import org.leat.electrics.DcLoad;
import org.leat.electrics.DiodeLine;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.WarmAlternator;
import org.leat.plant.solved.OperatingPoint;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

/**
 * Alternator, bridge and bus of a plant by the circuit simulator: the speed at which the wheel's torque meets that of the simulated
 * machine, and what is read there. The voltage that a tracking regulator holds is the model's.
 */
record SimulatedMachine(Path folder) {

    /** Of a speed, a share. */
    private static final double CLOSE = 2e-3;

    private static final int POINTS = 200;

    /** {@return whether a fault is one of the circuit} */
    static boolean simulates(FaultKind kind) {
        return switch (kind) {
            case MAGNETS_WEAKER,
                    WINDING_WARMER,
                    PHASE_OPEN,
                    DIODE_OPEN,
                    DIODE_SHORTED,
                    JOINT_BAD,
                    DUMP_ON,
                    REGULATOR_HOLDS_BACK,
                    BATTERY_NOT_TAKING -> true;
            default -> false;
        };
    }

    static BridgeFault bridge(FaultKind kind) {
        return switch (kind) {
            case PHASE_OPEN -> BridgeFault.PHASE_OPEN;
            case DIODE_OPEN -> BridgeFault.DIODE_OPEN;
            case DIODE_SHORTED -> BridgeFault.DIODE_SHORT;
            default -> BridgeFault.NONE;
        };
    }

    /** Source behind what the bridge feeds, and the battery in it. */
    private record Bus(double volts, double ohms, double batteryVolts, double batteryOhms, double conductance) {
        static Bus of(PlantNumbers n, FaultKind kind, double size) {
            double inner = n.battery().internalResistance();
            double volts = n.battery().restingVoltage();
            DumpLoadNumbers dump = n.dumpLoad();
            if (kind == FaultKind.DUMP_ON && dump != null) {
                double conductance = size / dump.resistanceHot();
                double share = 1 + conductance * inner;
                return new Bus(volts / share, inner / share, volts, inner, conductance);
            }
            return new Bus(volts, inner, volts, inner, 0);
        }
    }

    /**
     * Puts what is read on the bus in place of the model's values.
     *
     * @param values by slot, as the model has them; the speed begins the search
     * @param plant with the head that gives the jet its flow, and with the fault but for the dump load
     * @param sound the same without the fault
     */
    void read(double[] values, Plant plant, Plant sound, FaultKind kind, double size, NozzleGroup set) {
        PlantNumbers n = plant.numbers();
        Running running = plant.running(set);
        RunnerCharacteristic runner =
                new RunnerCharacteristic(n.runner(), n.water().density(), running.water());
        AlternatorNumbers alternator = n.alternator();
        AlternatorConstants machine =
                WarmAlternator.of(alternator.warmedTo(running.operatingPoint().windingTemperature()));
        AlternatorConstants withLead = new AlternatorConstants(
                machine.polePairs(),
                machine.fluxLinkage(),
                machine.phaseResistance() + n.busResistance().phase(),
                machine.phaseInductance());
        Bus bus = Bus.of(kind == FaultKind.DUMP_ON ? sound.numbers() : n, kind, size);
        double cables =
                n.busResistance().bridgeToRegulator() + n.busResistance().regulatorToBattery();
        OperatingPoint.Tracking tracking = running.operatingPoint().tracking();
        DcLoad load = tracking == null
                ? new DcLoad.Battery(bus.volts(), bus.ohms() + cables)
                : new DcLoad.Battery(tracking.voltage(), n.busResistance().bridgeToRegulator());
        DiodeLine diode = new DiodeLine(n.rectifier().threshold(), n.rectifier().slopeResistance());
        double gear = alternator.gearRatio();
        DoubleUnaryOperator surplus = speed -> {
            double own = speed * gear;
            double torque =
                    simulate(withLead, own, load, bridge(kind), diode).getOrDefault("pemf_avg", Double.NaN) / own;
            return runner.torque(speed) - gear * (torque + alternator.noLoad().at(own));
        };
        double guess = values[Channel.slot(LoadState.BUS, ReadingKind.SPEED)];
        double speed = root(surplus, guess, runner.runawaySpeed());
        Map<String, Double> s = simulate(withLead, speed * gear, load, bridge(kind), diode);
        double amps = s.getOrDefault("idc_avg", Double.NaN);
        double charging = tracking == null ? amps : converted(n, tracking.voltage() * amps);
        double node = bus.volts() + bus.ohms() * charging;
        double into = charging - bus.conductance() * node;
        if (kind == FaultKind.BATTERY_NOT_TAKING) {
            into *= 1 - size;
        }
        put(values, ReadingKind.SPEED, speed);
        put(values, ReadingKind.FREQUENCY, alternator.polePairs() * speed * gear / (2 * Math.PI));
        put(values, ReadingKind.BRIDGE_AMPS, amps);
        put(values, ReadingKind.BATTERY_AMPS, into);
        put(values, ReadingKind.BRIDGE_VOLTS, s.getOrDefault("vdc_avg", Double.NaN));
        put(values, ReadingKind.BATTERY_VOLTS, bus.batteryVolts() + bus.batteryOhms() * into);
        put(values, ReadingKind.LEAD_AMPS, largest(s, "ia2_avg", "ib2_avg", "ic2_avg"));
        put(values, ReadingKind.LEAD_VOLTS, largest(s, "vab2_avg", "vbc2_avg", "vca2_avg"));
    }

    /** Current that a tracker's output drives into the battery: what it takes is what it gives, over and over until that is so. */
    private static double converted(PlantNumbers n, double watts) {
        double ohms = n.battery().internalResistance() + n.busResistance().regulatorToBattery();
        double amps = 0;
        for (int i = 0; i < 60; i++) {
            amps = n.regulator().efficiency()
                    * Math.max(0, watts)
                    / (n.battery().restingVoltage() + ohms * amps);
        }
        return amps;
    }

    private static void put(double[] values, ReadingKind what, double value) {
        values[Channel.slot(LoadState.BUS, what)] = value;
    }

    private static double largest(Map<String, Double> s, String a, String b, String c) {
        double most = Math.max(
                s.getOrDefault(a, Double.NaN), Math.max(s.getOrDefault(b, Double.NaN), s.getOrDefault(c, Double.NaN)));
        return Math.sqrt(Math.max(0, most));
    }

    /** Brackets the zero next to a guess, then halves and draws chords. */
    private static double root(DoubleUnaryOperator surplus, double guess, double most) {
        double low = Math.min(guess, 0.98 * most);
        double high = low;
        double atLow = surplus.applyAsDouble(low);
        double atHigh = atLow;
        double step = 0.01;
        while (atLow < 0 && low > 1e-3 * most) {
            high = low;
            atHigh = atLow;
            low *= 1 - step;
            step = Math.min(0.5, 3 * step);
            atLow = surplus.applyAsDouble(low);
        }
        while (atHigh > 0 && high < most) {
            low = high;
            atLow = atHigh;
            high = Math.min(most, high * (1 + step));
            step *= 3;
            atHigh = high < most ? surplus.applyAsDouble(high) : Math.min(0, surplus.applyAsDouble(high));
        }
        for (int i = 0; i < 12 && high - low > CLOSE * high; i++) {
            double chord = (low * atHigh - high * atLow) / (atHigh - atLow);
            double middle = i % 3 == 2 ? 0.5 * (low + high) : Math.max(low, Math.min(high, chord));
            // a little to the other side, so that the bracket closes from both
            middle = Math.max(
                    low + 0.1 * CLOSE * high,
                    Math.min(high - 0.1 * CLOSE * high, middle + (i % 2 == 0 ? 0.4 : -0.4) * CLOSE * high));
            double at = surplus.applyAsDouble(middle);
            if (at > 0) {
                low = middle;
                atLow = at;
            } else {
                high = middle;
                atHigh = at;
            }
        }
        return 0.5 * (low + high);
    }

    private Map<String, Double> simulate(
            AlternatorConstants machine, double speed, DcLoad load, BridgeFault fault, DiodeLine diode) {
        double frequency = machine.frequency(speed);
        double settle =
                Math.max(Math.min(12 * machine.phaseInductance() / machine.phaseResistance(), 0.4), 4 / frequency);
        return CircuitSimulator.run(
                folder, CircuitSimulator.netlist(machine, speed, load, fault, settle, POINTS, diode));
    }
}
