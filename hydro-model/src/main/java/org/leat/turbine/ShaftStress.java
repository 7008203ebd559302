package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Stress at the surface of a solid round shaft: torsion {@code 16 T/(pi d^3)}, bending {@code 32 M/(pi d^3)}, both by
 * distortion energy {@code 16/(pi d^3) sqrt(4 M^2 + 3 T^2)}.
 *
 * <p>Symbols: {@code T} torque, {@code M} bending moment [N m]; {@code d} diameter [m]. Steady loads; keyways, shoulders
 * and the bending that alternates at every turn need their own factors: a third of yield is common practice. Source:
 * Saint-Venant; Shigley, Mechanical Engineering Design.
 */
public final class ShaftStress {

    private ShaftStress() {}

    /** {@return shear stress from torque [Pa]} */
    public static double torsion(double torque, double diameter) {
        return 16 * Math.abs(Physical.finite("torque", torque)) / section(diameter);
    }

    /** {@return bending stress [Pa]} */
    public static double bending(double moment, double diameter) {
        return 32 * Math.abs(Physical.finite("moment", moment)) / section(diameter);
    }

    /** {@return von Mises stress of both [Pa]} */
    public static double vonMises(double moment, double torque, double diameter) {
        Physical.finite("moment", moment);
        Physical.finite("torque", torque);
        return 16 * Math.sqrt(4 * moment * moment + 3 * torque * torque) / section(diameter);
    }

    private static double section(double diameter) {
        Physical.positive("diameter", diameter);
        return Math.PI * diameter * diameter * diameter;
    }
}
