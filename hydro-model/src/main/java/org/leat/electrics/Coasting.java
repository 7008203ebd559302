package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Iron and friction loss from coasting: nothing drives or loads the machine, and J dω/dt = −(T_0 + k ω). Of one time the
 * torque is taken as constant, T_0 = J (ω_1 − ω_2)/t. Of two times that follow each other, with κ = k/J, the root of
 * (ω_1 − ω_2)/(ω_2 − ω_3) = (e^(κ t_1) − 1)/(1 − e^(−κ t_2)) and T_0/k = (ω_1 − ω_2)/(e^(κ t_1) − 1) − ω_2.
 *
 * <p>Range: a torque that grows with speed, no faster than in proportion to it; other readings are refused. A wheel that
 * coasts with it moves air: its windage is then in the loss.
 *
 * <p>Source: Newton's law of rotation; the retardation method of IEC 60034-2-1 (from memory) with a straight line for the
 * torque. Symbols: J moment of inertia, kg·m²; ω angular speed, rad/s; t time, s; T_0 constant torque, N·m; k N·m·s.
 */
public final class Coasting {

    private Coasting() {}

    /** {@return the loss from one time (s) between two falling speeds (rad/s), all of it constant torque} */
    public static IronLoss fromOneTime(double inertia, double from, double to, double time) {
        Physical.positive("inertia", inertia);
        Physical.within("speed at the end", to, 0, from);
        return new IronLoss(inertia * (from - to) / Physical.positive("time", time), 0);
    }

    /**
     * {@return the loss from two times that follow each other}
     *
     * @param inertia kg·m²
     * @param from speed at the start, rad/s
     * @param middle speed after the first time, rad/s
     * @param to speed after the second time, rad/s
     * @param firstTime s
     * @param secondTime s
     * @throws IllegalArgumentException if no split with both parts nil or above fits
     */
    public static IronLoss fromTwoTimes(
            double inertia, double from, double middle, double to, double firstTime, double secondTime) {
        Physical.positive("inertia", inertia);
        Physical.positive("first time", firstTime);
        Physical.positive("second time", secondTime);
        double wanted = (from - middle) / (middle - to);
        double rate = rate(wanted, firstTime, secondTime);
        if (rate == 0) {
            return fromOneTime(inertia, from, to, firstTime + secondTime);
        }
        double beyond = (from - middle) / Math.expm1(rate * firstTime) - middle;
        // readings exactly in proportion leave a constant torque of nil but for rounding
        double constant = Math.abs(beyond) < 1e-7 * middle ? 0 : beyond;
        return new IronLoss(inertia * rate * constant, inertia * rate);
    }

    /** The decay κ, 1/s; the ratio of the two falls of speed rises with it from that of the times. */
    private static double rate(double wanted, double firstTime, double secondTime) {
        if (wanted < firstTime / secondTime * (1 - 1e-8)) {
            throw new IllegalArgumentException("the torque falls with speed");
        }
        double low = 0;
        double high = 700 / firstTime;
        for (int n = 0; n < 200 && high - low > 1e-15 * high; n++) {
            double middle = 0.5 * (low + high);
            if (middle == 0 || ratio(middle, firstTime, secondTime) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low * firstTime < 1e-9 ? 0 : low;
    }

    private static double ratio(double rate, double firstTime, double secondTime) {
        return Math.expm1(rate * firstTime) / -Math.expm1(-rate * secondTime);
    }
}
