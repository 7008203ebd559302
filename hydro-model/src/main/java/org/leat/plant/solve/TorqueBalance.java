package org.leat.plant.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.leat.plant.solved.OperatingPoint.Crossing;

/**
 * Every speed at which runner and alternator torque are equal: changes of sign between samples of the curve, and between
 * a sample and the turning point of the difference where that lies close to nil, each refined on the exact torque.
 */
public final class TorqueBalance {

    /** Share of the greater torque within which a turning point of the difference is looked at. */
    private static final double CLOSE = 0.05;

    private static final double STEP_BEYOND = 1.25;

    private final TorqueCurve curve;
    private final RunnerCharacteristic runner;
    private final DoubleUnaryOperator surplus;
    private final List<Crossing> crossings = new ArrayList<>();

    private double lastSpeed;
    private double lastSurplus;

    private TorqueBalance(TorqueCurve curve, RunnerCharacteristic runner) {
        this.curve = curve;
        this.runner = runner;
        this.surplus = speed -> runner.torque(speed) - curve.torqueAt(speed);
    }

    /** {@return the crossings from slow to fast; empty where the jet does not turn the machine} */
    public static List<Crossing> of(TorqueCurve curve, RunnerCharacteristic runner) {
        TorqueBalance balance = new TorqueBalance(curve, runner);
        if (runner.torque(0) - curve.idle(0) > 0) {
            balance.scan(runner.runawaySpeed());
        }
        return balance.crossings;
    }

    private void scan(double runaway) {
        lastSpeed = 0;
        lastSurplus = runner.torque(0) - curve.idle(0);
        double before = lastSurplus;
        for (int i = 0; i < curve.samples() && curve.speed(i) < runaway; i++) {
            double speed = curve.speed(i);
            double here = runner.torque(speed) - curve.torque(i);
            if (i + 1 < curve.samples()) {
                turning(before, lastSurplus, here, i);
            }
            before = lastSurplus;
            advance(speed, here);
        }
        double speed = lastSpeed;
        while (speed < runaway) {
            speed = speed > 0 ? Math.min(runaway, speed * STEP_BEYOND) : runaway;
            // at runaway the runner's torque is nil and the surplus cannot be positive
            double here = surplus.applyAsDouble(speed);
            advance(speed, speed == runaway ? Math.min(here, 0) : here);
        }
    }

    /** Looks between samples where three of one sign turn close to nil. */
    private void turning(double first, double second, double third, int sample) {
        boolean valley = second > 0 && first > second && third >= second && third > 0;
        boolean hill = second < 0 && first < second && third <= second && third < 0;
        if (!(valley || hill) || sample < 2) {
            return;
        }
        double middle = curve.speed(sample - 1);
        if (Math.abs(second) > CLOSE * curve.torque(sample - 1)) {
            return;
        }
        double low = curve.speed(sample - 2);
        double high = curve.speed(sample);
        double best = middle;
        for (int n = 0; n < 12; n++) {
            double left = 0.5 * (low + middle);
            double right = 0.5 * (middle + high);
            double atLeft = surplus.applyAsDouble(left);
            double atRight = surplus.applyAsDouble(right);
            double atMiddle = surplus.applyAsDouble(middle);
            boolean leftBest = valley ? atLeft < atMiddle : atLeft > atMiddle;
            boolean rightBest = valley ? atRight < atMiddle : atRight > atMiddle;
            best = leftBest ? left : rightBest ? right : middle;
            double atBest = leftBest ? atLeft : rightBest ? atRight : atMiddle;
            if (valley ? atBest <= 0 : atBest >= 0) {
                insert(best, atBest, low);
                return;
            }
            if (leftBest) {
                high = middle;
                middle = left;
            } else if (rightBest) {
                low = middle;
                middle = right;
            } else {
                low = left;
                high = right;
            }
        }
    }

    /** A turning point across nil: the crossing before it is taken now, the one after it by the next sample. */
    private void insert(double speed, double here, double low) {
        if (speed > lastSpeed) {
            advance(speed, here);
        } else {
            // it lies before the sample already passed: both crossings lie between the one before that and this sample
            double atLow = surplus.applyAsDouble(low);
            add(Root.between(surplus, low, atLow, speed, here), atLow > 0);
            add(Root.between(surplus, speed, here, lastSpeed, lastSurplus), atLow <= 0);
        }
    }

    private void advance(double speed, double here) {
        if (speed > lastSpeed && (lastSurplus > 0) != (here > 0)) {
            add(Root.between(surplus, lastSpeed, lastSurplus, speed, here), lastSurplus > 0);
        }
        lastSpeed = speed;
        lastSurplus = here;
    }

    private void add(double speed, boolean stable) {
        crossings.add(new Crossing(speed, runner.torque(speed), stable));
    }

    /** {@return the first stable crossing from standstill; null where there is none} */
    public static @Nullable Crossing first(List<Crossing> crossings) {
        for (Crossing crossing : crossings) {
            if (crossing.stable()) {
                return crossing;
            }
        }
        return null;
    }
}
