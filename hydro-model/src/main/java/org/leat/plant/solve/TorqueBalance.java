package org.leat.plant.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.leat.plant.solved.OperatingPoint.Crossing;

/**
 * Every speed at which runner and alternator torque are equal: changes of sign between samples of the curve and of what lies beyond
 * it up to the runaway, and between a sample and the turning point of the difference where that may cross nil, each refined on the
 * exact torque.
 *
 * <p>Between three samples of one sign with a turning point towards nil the difference is searched, unless the two lines through
 * neighbours, carried on, stay clear of nil: past the greatest torque, where the alternator's falls ever more slowly, the difference
 * lies below them.
 */
public final class TorqueBalance {

    /** Share of the greater torque within which a turning point of the difference is looked at in any case. */
    private static final double CLOSE = 0.05;

    private static final double STEP_BEYOND = 1.1;
    private static final int HALVINGS = 12;

    private final RunnerCharacteristic runner;
    private final DoubleUnaryOperator surplus;
    private final List<Crossing> crossings = new ArrayList<>();

    private final double[] speeds = new double[3];
    private final double[] surpluses = new double[3];
    private int known;

    private TorqueBalance(TorqueCurve curve, RunnerCharacteristic runner) {
        this.runner = runner;
        this.surplus = speed -> runner.torque(speed) - curve.torqueAt(speed);
    }

    /** {@return the crossings from slow to fast; empty where the jet does not turn the machine} */
    public static List<Crossing> of(TorqueCurve curve, RunnerCharacteristic runner) {
        TorqueBalance balance = new TorqueBalance(curve, runner);
        if (runner.torque(0) - curve.idle(0) > 0) {
            balance.scan(curve, runner.runawaySpeed());
        }
        return balance.crossings;
    }

    private void scan(TorqueCurve curve, double runaway) {
        double speed = 0;
        next(0, runner.torque(0) - curve.idle(0));
        for (int i = 0; i < curve.samples() && curve.speed(i) < runaway; i++) {
            speed = curve.speed(i);
            next(speed, runner.torque(speed) - curve.torque(i));
        }
        while (speed < runaway) {
            speed = speed > 0 ? Math.min(runaway, speed * STEP_BEYOND) : runaway;
            // at runaway the runner's torque is nil and the surplus cannot be positive
            double here = surplus.applyAsDouble(speed);
            next(speed, speed == runaway ? Math.min(here, 0) : here);
        }
    }

    /** Takes the next sample: a crossing since the last one, or two about a turning point near it. */
    private void next(double speed, double here) {
        if (known > 0 && !(speed > speeds[known - 1])) {
            return;
        }
        if (known == 3) {
            System.arraycopy(speeds, 1, speeds, 0, 2);
            System.arraycopy(surpluses, 1, surpluses, 0, 2);
            known = 2;
        }
        speeds[known] = speed;
        surpluses[known] = here;
        known++;
        if (known == 3 && turns()) {
            search();
        }
        if (known > 1) {
            between(speeds[known - 2], surpluses[known - 2], speed, here);
        }
    }

    private void between(double low, double atLow, double high, double atHigh) {
        if ((atLow > 0) != (atHigh > 0)) {
            double speed = Root.between(surplus, low, atLow, high, atHigh);
            crossings.add(new Crossing(speed, runner.torque(speed), atLow > 0));
        }
    }

    private boolean valley() {
        return surpluses[1] > 0;
    }

    /** Whether three samples of one sign turn towards nil, and may cross it. */
    private boolean turns() {
        double sign = valley() ? 1 : -1;
        double first = sign * surpluses[0];
        double second = sign * surpluses[1];
        double third = sign * surpluses[2];
        if (!(second > 0 && first > second && third >= second)) {
            return false;
        }
        double before = speeds[1] - speeds[0];
        double after = speeds[2] - speeds[1];
        double carriedOn = second - (first - second) / before * after;
        double carriedBack = second - (third - second) / after * before;
        return Math.min(carriedOn, carriedBack) <= 0 || second < CLOSE * runner.torque(speeds[1]);
    }

    /** Halves about the turning point until it has crossed nil; then both crossings are added. */
    private void search() {
        double low = speeds[0];
        double middle = speeds[1];
        double high = speeds[2];
        double sign = valley() ? 1 : -1;
        double atMiddle = sign * surpluses[1];
        for (int n = 0; n < HALVINGS; n++) {
            double left = 0.5 * (low + middle);
            double right = 0.5 * (middle + high);
            double atLeft = sign * surplus.applyAsDouble(left);
            double atRight = sign * surplus.applyAsDouble(right);
            if (Math.min(atLeft, atRight) <= 0) {
                boolean leftCrosses = atLeft <= 0;
                double found = leftCrosses ? left : right;
                double atFound = sign * (leftCrosses ? atLeft : atRight);
                int side = found < speeds[1] ? 0 : 1;
                between(speeds[side], surpluses[side], found, atFound);
                between(found, atFound, speeds[side + 1], surpluses[side + 1]);
                return;
            }
            if (atLeft < atMiddle) {
                high = middle;
                middle = left;
                atMiddle = atLeft;
            } else if (atRight < atMiddle) {
                low = middle;
                middle = right;
                atMiddle = atRight;
            } else {
                low = left;
                high = right;
            }
        }
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
