package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Iron and friction loss of the unloaded machine: P = T_f ω + k_h f + k_e f². Friction and hysteresis both give a torque
 * that does not depend on speed, the eddy currents one that rises with it.
 *
 * <p>From one reading of no-load power the split is not known: it is then taken as all constant torque at speeds above
 * the reading (too low a loss, cautious for runaway). From two readings both parts follow; see {@link Coasting} for
 * readings of a machine that coasts.
 *
 * <p>Source: the usual split of core loss (Steinmetz form, from memory). No published figures of hub motors are known.
 *
 * @param constantTorque friction and hysteresis, N·m
 * @param eddyTorquePerSpeed eddy currents, N·m·s
 */
public record IronLoss(double constantTorque, double eddyTorquePerSpeed) {

    /** No loss. */
    public static final IronLoss NONE = new IronLoss(0, 0);

    public IronLoss {
        Physical.notNegative("constant torque", constantTorque);
        Physical.notNegative("eddy torque per speed", eddyTorquePerSpeed);
    }

    /** {@return the loss from one reading of power (W) at a speed (rad/s), all of it constant torque} */
    public static IronLoss fromOneReading(double power, double speed) {
        return new IronLoss(power / Physical.positive("speed", speed), 0);
    }

    /**
     * {@return the loss from two readings}
     *
     * @param power1 W at the first speed
     * @param speed1 rad/s
     * @param power2 W at the second speed
     * @param speed2 rad/s, above the first
     * @throws IllegalArgumentException if no split with both parts above zero fits
     */
    public static IronLoss fromTwoReadings(double power1, double speed1, double power2, double speed2) {
        double t1 = power1 / Physical.positive("speed", speed1);
        double t2 = power2 / Physical.positive("speed", speed2);
        double slope = notRounding((t2 - t1) / (speed2 - speed1), t2 / speed2);
        return new IronLoss(notRounding(t1 - slope * speed1, t1), slope);
    }

    /** What readings at an end of the range leave by rounding is nil. */
    private static double notRounding(double value, double whole) {
        return Math.abs(value) <= 1e-8 * whole ? 0 : value;
    }

    /**
     * {@return the loss from the coefficients over frequency}
     *
     * @param hysteresis k_h, W/Hz
     * @param eddy k_e, W/Hz²
     * @param polePairs p
     */
    public static IronLoss fromCoefficients(double hysteresis, double eddy, int polePairs) {
        double perSpeed = polePairs / (2 * Math.PI);
        return new IronLoss(hysteresis * perSpeed, eddy * perSpeed * perSpeed);
    }

    /** {@return torque at an angular speed above nil (rad/s), N·m} */
    public double torque(double speed) {
        return constantTorque + eddyTorquePerSpeed * speed;
    }

    /** {@return power at an angular speed (rad/s), W} */
    public double power(double speed) {
        return torque(speed) * speed;
    }
}
