package org.leat.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.readings.MotorBench.Test;

/** Which further reading tells most: that of which the likely answers expect the most unlike values, in uncertainties of it. */
final class BenchFurtherReading {

    /** So many standard uncertainties apart, and a reading tells two answers apart. */
    private static final double APART = 3;

    private static final int MOST = 3;

    private final BenchFit.Task task;
    private final BenchFit first;
    private final double fastest;

    BenchFurtherReading(BenchFit.Task task, BenchFit first, double fastest) {
        this.task = task;
        this.first = first;
        this.fastest = fastest;
    }

    /** {@return the reading that tells another answer from the first; null where none does} */
    @Nullable
    Test between(BenchFit other) {
        Test best = null;
        double most = APART;
        for (Test test : Test.values()) {
            double apart = apart(test, other);
            if (apart > most) {
                most = apart;
                best = test;
            }
        }
        return best;
    }

    /** {@return the readings that tell most about all of these answers} */
    List<Test> best(List<BenchFit> others) {
        Map<Test, Double> scores = new EnumMap<>(Test.class);
        for (Test test : Test.values()) {
            double score = others.stream()
                    .mapToDouble(o -> Math.min(1, Math.pow(apart(test, o) / APART, 2))
                            * o.fault().weight())
                    .sum();
            if (score > 0.3) {
                scores.put(test, score);
            }
        }
        List<Test> best = new ArrayList<>(scores.keySet());
        best.sort(Comparator.comparingDouble((Test t) -> -scores.getOrDefault(t, 0.0)));
        return List.copyOf(best.subList(0, Math.min(MOST, best.size())));
    }

    private double apart(Test test, BenchFit other) {
        FaultyMotor here = motor(first);
        FaultyMotor there = motor(other);
        double[] one = shown(test, here);
        double[] two = shown(test, there);
        double apart = 0;
        for (int i = 0; i < one.length; i++) {
            double size = Math.max(Math.abs(one[i]), Math.abs(two[i]));
            double standard = Math.max(1e-9, uncertainty(test, size));
            apart = Math.max(apart, Math.abs(one[i] - two[i]) / standard);
        }
        return apart;
    }

    /** A fault that does not show is taken at its usual size. */
    private FaultyMotor motor(BenchFit fit) {
        return task.motor(fit.at(), fit.fault(), fit.variant(), fit.pairs());
    }

    private static double uncertainty(Test test, double size) {
        return switch (test) {
            case COUNT_BY_HAND -> 0.2;
            case BRIDGE_VOLTS -> 0.012 * size + 0.2;
            case FREQUENCY -> 0.006 * size;
            case VOLTS_OF_PAIRS, RESISTANCE_OF_PAIRS -> 0.012 * size;
            case VOLTS_FAST, VOLTS_SLOW -> 0.01 * size;
            case SHORTED_SLOW, SHORTED_FAST -> 0.025 * size + 0.05;
            case COASTING -> 0.2 * size;
        };
    }

    private double[] shown(Test test, FaultyMotor motor) {
        double speed = motor.speed(fastest);
        double slow = 0.3 * motor.phaseResistance() / (motor.periods() * motor.phaseInductance());
        return switch (test) {
            case BRIDGE_VOLTS -> new double[] {motor.bridgeVolts(speed)};
            case COUNT_BY_HAND -> new double[] {motor.periods()};
            case FREQUENCY -> new double[] {motor.frequency(speed)};
            case VOLTS_OF_PAIRS -> {
                double mean = (motor.volts(0, speed) + motor.volts(1, speed) + motor.volts(2, speed)) / 3;
                yield new double[] {
                    motor.volts(0, speed) / mean, motor.volts(1, speed) / mean, motor.volts(2, speed) / mean
                };
            }
            case VOLTS_FAST -> new double[] {motor.volts(0, 2 * speed) / motor.volts(0, speed)};
            case VOLTS_SLOW -> new double[] {motor.volts(0, speed) / motor.volts(0, speed / 4)};
            case RESISTANCE_OF_PAIRS -> new double[] {motor.fourWires(0), motor.fourWires(1), motor.fourWires(2)};
            case SHORTED_SLOW -> motor.amps(Math.min(slow, speed), 1);
            case SHORTED_FAST -> motor.amps(10 * slow, 1);
            case COASTING -> new double[] {motor.drag()};
        };
    }
}
