package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Speed of a machine that coasts, nothing driving or loading it: J dω/dt = −(T_0 + k ω), so that
 * ω(t) = (ω_0 + T_0/k) e^(−k t/J) − T_0/k, and ω_0 − T_0 t/J where the torque does not grow with speed. It stands still from the time
 * at which that is nil.
 *
 * <p>Range: torques of nil or above, times of nil or above; other arguments are refused.
 *
 * <p>Source: Newton's law of rotation; the retardation method of IEC 60034-2-1 (from memory) with a straight line for the torque.
 * Symbols: J moment of inertia, kg·m²; ω angular speed, rad/s; t time, s; T_0 constant torque, N·m; k N·m·s.
 */
public final class CoastingCurve {

    /** Below it e^x − 1 is x to the last digit that counts. */
    private static final double STRAIGHT = 1e-9;

    private CoastingCurve() {}

    /**
     * {@return speed after a time, rad/s}
     *
     * @param loss that slows it
     * @param inertia of all that coasts, kg·m²
     * @param from speed when the watch was started, rad/s
     * @param time since then, s
     */
    public static double speed(IronLoss loss, double inertia, double from, double time) {
        Physical.positive("inertia", inertia);
        Physical.notNegative("speed", from);
        Physical.notNegative("time", time);
        double decay = loss.eddyTorquePerSpeed() / inertia * time;
        double constant = loss.constantTorque() / inertia * time;
        // (1 − e^−x)/x, which is one where nothing grows with speed
        double shape = decay < STRAIGHT ? 1 : -Math.expm1(-decay) / decay;
        return Math.max(0, from * Math.exp(-decay) - constant * shape);
    }
}
