package org.leat.plant.solve;

import org.leat.electrics.BatteryClamp;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.plant.solved.OperatingPoint.Tracking;
import org.leat.plant.solved.OperatingPoint.Tracking.Bound;

/**
 * The voltage a tracking regulator comes to: that of most power inside its window, raised beyond it where its output
 * current would be exceeded. The power is taken to have one maximum over the voltage, as that of a runner and a machine
 * with one best speed has.
 */
final class MaximumPowerTracker {

    private static final double TOLERANCE = 2e-4;
    private static final double SPEED_TOLERANCE = 1e-7;

    private final PlantNumbers numbers;
    private final ElectricSide machine;
    private final RunnerCharacteristic runner;
    private final double runaway;
    private final double gear;

    private double guess;

    MaximumPowerTracker(PlantNumbers numbers, ElectricSide machine, RunnerCharacteristic runner) {
        this.numbers = numbers;
        this.machine = machine;
        this.runner = runner;
        this.runaway = runner.runawaySpeed();
        this.gear = numbers.alternator().gearRatio();
        this.guess = runner.bestSpeed();
    }

    Tracking track() {
        RegulatorNumbers regulator = numbers.regulator();
        double from = Math.max(1e-3, regulator.windowFrom());
        double open = machine.linePeak(runaway * gear) - 2 * numbers.rectifier().threshold();
        double to = Math.min(Math.max(from, regulator.windowTo()), open);
        if (!(to > from)) {
            return new Tracking(from, Bound.WINDOW_FROM);
        }
        double best = GoldenSection.about(this::power, from, to, TOLERANCE).middle();
        Bound bound = Bound.NOTHING;
        if (best - from < 2 * TOLERANCE * from) {
            best = from;
            bound = Bound.WINDOW_FROM;
        } else if (to - best < 2 * TOLERANCE * to && to < open) {
            best = to;
            bound = Bound.WINDOW_TO;
        }
        if (regulator.currentRating() instanceof Amount.Known known && output(best) > known.value()) {
            double rating = known.value();
            double lightest = Math.max(best, open * (1 - 1e-9));
            double atBest = output(best) - rating;
            double raised = FalsePosition.between(v -> output(v) - rating, best, atBest, lightest, -rating, TOLERANCE);
            return new Tracking(raised, Bound.CURRENT);
        }
        return new Tracking(best, bound);
    }

    /** Current out of the regulator, A. */
    private double output(double voltage) {
        double out = numbers.regulator().efficiency() * power(voltage);
        return ChargingPath.current(
                out,
                numbers.battery().restingVoltage(),
                numbers.battery().internalResistance() + numbers.busResistance().regulatorToBattery());
    }

    /** Power at the regulator's input, W. */
    private double power(double voltage) {
        BatteryClamp bus = machine.bus(voltage, numbers.busResistance().bridgeToRegulator());
        double speed = speed(bus);
        BridgeOperatingPoint point = bus.at(speed * gear);
        return voltage * point.directCurrent();
    }

    /** The speed on a bus: bracketed from that of the voltage tried before. */
    private double speed(BatteryClamp bus) {
        double cutIn = bus.clampVoltage() / machine.linePeak(gear);
        if (!(surplus(bus, cutIn) > 0)) {
            return cutIn;
        }
        double low = cutIn;
        double atLow = surplus(bus, cutIn);
        double high = Math.min(runaway, Math.max(1.02 * cutIn, 1.02 * guess));
        double atHigh = surplus(bus, high);
        while (atHigh > 0 && high < runaway) {
            low = high;
            atLow = atHigh;
            high = Math.min(runaway, 1.08 * high);
            atHigh = surplus(bus, high);
        }
        double near = Math.max(low, 0.97 * Math.min(guess, high));
        if (near > low && near < high) {
            double atNear = surplus(bus, near);
            if (atNear > 0) {
                low = near;
                atLow = atNear;
            } else {
                high = near;
                atHigh = atNear;
            }
        }
        double found = atHigh > 0
                ? high
                : FalsePosition.between(s -> surplus(bus, s), low, atLow, high, atHigh, SPEED_TOLERANCE);
        guess = found;
        return found;
    }

    private double surplus(BatteryClamp bus, double speed) {
        double idle = machine.noLoadTorque(speed * gear);
        return runner.torque(speed) - gear * (bus.at(speed * gear).torque() + idle);
    }
}
