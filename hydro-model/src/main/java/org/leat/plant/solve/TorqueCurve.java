package org.leat.plant.solve;

import java.util.Arrays;
import org.leat.electrics.BatteryClamp;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.electrics.CutInSpeed;
import org.leat.plant.numbers.AlternatorNumbers;

/**
 * Torque that the alternator asks of the runner against the runner's speed, on one bus, gear included. Sampled from
 * cut-in to well past its maximum, close where it bends.
 */
public final class TorqueCurve {

    private static final double FIRST_STEP = 0.02;
    private static final double GROWTH = 1.5;
    private static final double FALLEN = 0.7;
    private static final int MOST = 64;

    /** Of the peak's speed, before the parabola. */
    private static final double PEAK_TOLERANCE = 1e-2;

    private final BatteryClamp bus;
    private final double gear;
    private final double windingTemperature;
    private final double noLoad;
    private final double noLoadPerSpeed;
    private final double cutIn;
    private final double[] speed;
    private final double[] torque;
    private final double peakSpeed;

    TorqueCurve(BatteryClamp bus, AlternatorNumbers alternator) {
        this.bus = bus;
        this.gear = alternator.gearRatio();
        this.windingTemperature = alternator.windingTemperature();
        this.noLoad = alternator.noLoadTorque() * gear;
        this.noLoadPerSpeed = alternator.noLoadTorquePerSpeed() * gear * gear;
        this.cutIn = CutInSpeed.of(bus) / gear;
        double resistance = alternator.phaseResistance()
                + bus.leadResistance()
                + bus.diode().slope();
        double corner = resistance / (alternator.polePairs() * alternator.phaseInductance() * gear);
        double base = Math.max(cutIn, 1e-2 * corner);
        double[] speeds = new double[MOST];
        double[] torques = new double[MOST];
        speeds[0] = cutIn;
        int n = 1;
        int peak = 0;
        for (double step = FIRST_STEP; n < MOST; step *= GROWTH) {
            speeds[n] = base * (1 + step);
            torques[n] = electric(speeds[n]);
            if (torques[n] > torques[peak]) {
                peak = n;
            }
            n++;
            if (n > peak + 3 && torques[n - 1] < FALLEN * torques[peak]) {
                break;
            }
        }
        this.speed = Arrays.copyOf(speeds, n);
        this.torque = Arrays.copyOf(torques, n);
        this.peakSpeed = peak > 0 && peak + 1 < n ? greatest(peak) : speed[peak];
    }

    /** Golden section between the neighbours of the greatest sample, then a parabola. */
    private double greatest(int peak) {
        GoldenSection near = GoldenSection.about(this::electric, speed[peak - 1], speed[peak + 1], PEAK_TOLERANCE);
        return vertex(near.low(), near.middle(), near.high());
    }

    /** The top of the parabola through three neighbouring points, an equal step apart. */
    private double vertex(double low, double middle, double high) {
        double atLow = electric(low);
        double atHigh = electric(high);
        double bend = atLow - 2 * electric(middle) + atHigh;
        double shift = bend < 0 ? 0.5 * (atLow - atHigh) / bend : 0;
        return middle + (middle - low) * Math.max(-1, Math.min(1, shift));
    }

    /** {@return speed of the runner at which current begins to flow, rad/s} */
    public double cutIn() {
        return cutIn;
    }

    /** {@return speed of the runner at the greatest electric torque, rad/s} */
    double peakSpeed() {
        return peakSpeed;
    }

    int samples() {
        return speed.length;
    }

    double speed(int sample) {
        return speed[sample];
    }

    /** {@return torque at a sample, no-load torque included, N·m} */
    double torque(int sample) {
        return torque[sample] + idle(speed[sample]);
    }

    /** {@return torque at any speed of the runner, no-load torque included, N·m} */
    public double torqueAt(double runnerSpeed) {
        return (runnerSpeed > cutIn ? electric(runnerSpeed) : 0) + idle(runnerSpeed);
    }

    /** {@return no-load torque, N·m} */
    double idle(double runnerSpeed) {
        return noLoad + noLoadPerSpeed * runnerSpeed;
    }

    /** {@return the electric side at a speed of the runner} */
    public BridgeOperatingPoint pointAt(double runnerSpeed) {
        return bus.at(runnerSpeed * gear);
    }

    /** {@return K} */
    double windingTemperature() {
        return windingTemperature;
    }

    BatteryClamp bus() {
        return bus;
    }

    private double electric(double runnerSpeed) {
        return bus.at(runnerSpeed * gear).torque() * gear;
    }
}
