package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Loads of the two bearings of a shaft that carries its runner outside them: near {@code F (L + a)/L}, far
 * {@code F a/L}.
 *
 * <p>Symbols: {@code F} load across the shaft at the runner [N]; {@code a} overhang beyond the near bearing, {@code L}
 * distance between the bearings [m]. The worst {@code F} is one jet alone, its force on the whole wheel, with the weight.
 * Valid for all physical inputs. Source: statics.
 */
public final class OverhungBearings {

    private OverhungBearings() {}

    /** {@return load of the bearing beside the runner [N]} */
    public static double near(double load, double overhang, double spacing) {
        return load + far(load, overhang, spacing);
    }

    /** {@return load of the other bearing [N], in the opposite direction} */
    public static double far(double load, double overhang, double spacing) {
        Physical.notNegative("load", load);
        Physical.notNegative("overhang", overhang);
        return load * overhang / Physical.positive("spacing", spacing);
    }

    /** {@return bending moment in the shaft at the near bearing [N m]} */
    public static double moment(double load, double overhang) {
        return Physical.notNegative("load", load) * Physical.notNegative("overhang", overhang);
    }
}
