package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Hoop stress of a thin ring that spins: {@code rho V^2}.
 *
 * <p>Symbols: {@code rho} density of its material [kg/m3]; {@code V} speed of its mean circumference [m/s], at runaway.
 * Buckets that do not carry themselves add to it. Valid for a ring thin against its radius. Source: mechanics, any text;
 * it equals {@link DiscStress} with the hole grown to the rim.
 */
public final class RimStress {

    private RimStress() {}

    /** {@return hoop stress [Pa]} */
    public static double of(double density, double rimSpeed) {
        Physical.positive("density", density);
        Physical.finite("rimSpeed", rimSpeed);
        return density * rimSpeed * rimSpeed;
    }
}
