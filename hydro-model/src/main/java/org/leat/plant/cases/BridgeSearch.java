package org.leat.plant.cases;

import java.util.OptionalDouble;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.BridgeTimeStepper;
import org.leat.electrics.BridgeWaveform;
import org.leat.electrics.DcLoad;
import org.leat.electrics.DiodeLine;
import org.leat.plant.solve.FalsePosition;
import org.leat.plant.solve.RunnerCharacteristic;

/**
 * The search for the speed at which a runner and an alternator behind a broken bridge meet: all that the answer is computed from, so
 * that equal ones of plants that have much in common are searched once.
 *
 * @param fault of the bridge
 * @param machine at working temperature
 * @param diode of the bridge
 * @param bus what the bridge feeds
 * @param lead resistance of one lead, Ω
 * @param runner under its jets
 * @param idle what the alternator takes without current
 * @param gearRatio alternator over runner speed
 * @param from speed of the runner from which on it is searched, rad/s
 */
record BridgeSearch(
        BridgeFault fault,
        AlternatorConstants machine,
        DiodeLine diode,
        DcLoad.Battery bus,
        double lead,
        RunnerCharacteristic runner,
        Idle idle,
        double gearRatio,
        double from) {

    private static final int STEPS = 360;
    private static final int MEASURED = 2;
    private static final double UPWARD = 1.07;
    private static final double DOWNWARD = 0.8;
    private static final double SLOWEST = 0.02;
    private static final double TOLERANCE = 2e-3;

    /**
     * What an alternator takes without current, and how long its currents take to settle.
     *
     * @param torque N·m
     * @param torquePerSpeed N·m·s
     * @param phaseResistance of the cold winding, Ω
     * @param phaseInductance H
     */
    record Idle(double torque, double torquePerSpeed, double phaseResistance, double phaseInductance) {}

    /**
     * Where they meet.
     *
     * @param held whether they meet, and below the runaway
     * @param speed of the runner, rad/s
     * @param wave what the bridge does there
     */
    record Found(boolean held, double speed, BridgeWaveform wave) {}

    /** Of a few numbers that nearly always differ where anything does. */
    @Override
    public int hashCode() {
        return fault.name().hashCode()
                + 31 * (Double.hashCode(from) + 31 * (Double.hashCode(lead) + 31 * Double.hashCode(gearRatio)));
    }

    /** {@return where they meet; the runaway, or the slowest speed tried, where they do not} */
    Found found() {
        return new Run().found();
    }

    /** One search, which keeps what it looked at last: mostly that is where it ends. */
    private final class Run {

        private final BridgeTimeStepper begin =
                new BridgeTimeStepper(machine, lead, diode, from * gearRatio, bus, fault, STEPS);
        private OptionalDouble lastSpeed = OptionalDouble.empty();
        private BridgeTimeStepper last = begin;

        Found found() {
            double atWork = surplus(from);
            return atWork < 0 ? braked(atWork) : driven(atWork);
        }

        /** From the working speed down to where the runner's torque meets the brake's. */
        private Found braked(double atWork) {
            double slowest = SLOWEST * from;
            double high = from;
            double atHigh = atWork;
            double low = high;
            double atLow = atHigh;
            while (atLow < 0 && low > slowest) {
                high = low;
                atHigh = atLow;
                low *= DOWNWARD;
                atLow = surplus(low);
            }
            return atLow < 0
                    ? at(low, false)
                    : at(FalsePosition.between(this::surplus, low, atLow, high, atHigh, TOLERANCE), true);
        }

        private Found driven(double atWork) {
            double runaway = runner.runawaySpeed();
            double low = from;
            double atLow = atWork;
            double high = low;
            double atHigh = atLow;
            while (atHigh > 0 && high < runaway) {
                low = high;
                atLow = atHigh;
                high = Math.min(runaway, high * UPWARD);
                atHigh = high < runaway ? surplus(high) : Math.min(surplus(high), 0);
            }
            double speed = atHigh < 0 && atLow > 0
                    ? FalsePosition.between(this::surplus, low, atLow, high, atHigh, TOLERANCE)
                    : high;
            return at(speed, speed < runaway);
        }

        private Found at(double speed, boolean held) {
            BridgeTimeStepper run = lastSpeed.isPresent() && speed == lastSpeed.getAsDouble() ? last : settled(speed);
            return new Found(held, speed, run.measure(MEASURED));
        }

        /** Torque that speeds the runner up, N·m. */
        private double surplus(double speed) {
            double unloaded = idle.torque() + idle.torquePerSpeed() * speed * gearRatio;
            BridgeTimeStepper run = settled(speed);
            lastSpeed = OptionalDouble.of(speed);
            last = run.copy();
            return runner.torque(speed) - gearRatio * (run.torque(MEASURED) + unloaded);
        }

        private BridgeTimeStepper settled(double speed) {
            double own = speed * gearRatio;
            BridgeTimeStepper run = begin.at(own);
            run.run(SteppedStart.periods(
                    idle.phaseResistance() + lead,
                    idle.phaseInductance(),
                    machine.electricalSpeed(own) / (2 * Math.PI)));
            return run;
        }
    }
}
