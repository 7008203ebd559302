package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Equivalent dynamic load of a bearing: {@code P = max(Fr, X Fr + Y Fa)}.
 *
 * <p>Symbols: {@code Fr} radial and {@code Fa} axial load [N]; {@code X}, {@code Y} factors of the bearing [1], single-row
 * deep-groove ball {@code X = 0.56} where {@code Fa/Fr} is above its limit {@code e}, {@code Y} 1.0 to 2.3 by
 * {@code Fa/C0}. Valid for all physical inputs. Source: ISO 281:2007, table 3.
 */
public final class EquivalentBearingLoad {

    private EquivalentBearingLoad() {}

    /** Radial factor of single-row deep-groove ball bearings [1]. */
    public static final double DEEP_GROOVE_X = 0.56;

    /** {@return equivalent load [N]} */
    public static double of(double radial, double axial, double radialFactor, double axialFactor) {
        Physical.notNegative("radial", radial);
        Physical.notNegative("axial", axial);
        Physical.notNegative("radialFactor", radialFactor);
        Physical.notNegative("axialFactor", axialFactor);
        return Math.max(radial, radialFactor * radial + axialFactor * axial);
    }
}
