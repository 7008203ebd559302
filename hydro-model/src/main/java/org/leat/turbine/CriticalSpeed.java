package org.leat.turbine;

import org.leat.law.Physical;

/**
 * First bending critical speed of a round shaft with an overhung runner:
 * {@code sqrt(3 E I/(m a^2 (L + a)))}, {@code I = pi d^4/64}.
 *
 * <p>Symbols: {@code E} modulus of the shaft [Pa]; {@code d} its diameter, {@code a} overhang, {@code L} distance between
 * the bearings [m]; {@code m} mass of the runner [kg]. Stiff bearings, shaft without mass, no gyroscopic effect; soft
 * bearings lower it. Keep it 1.3 times above runaway (common practice). Source: beam with one mass, any text on
 * vibration.
 */
public final class CriticalSpeed {

    private CriticalSpeed() {}

    /** {@return critical angular speed [rad/s]} */
    public static double overhung(double modulus, double diameter, double mass, double overhang, double spacing) {
        Physical.positive("modulus", modulus);
        Physical.positive("diameter", diameter);
        Physical.positive("mass", mass);
        Physical.positive("overhang", overhang);
        Physical.positive("spacing", spacing);
        double inertia = Math.PI * Math.pow(diameter, 4) / 64;
        return Math.sqrt(3 * modulus * inertia / (mass * overhang * overhang * (spacing + overhang)));
    }
}
