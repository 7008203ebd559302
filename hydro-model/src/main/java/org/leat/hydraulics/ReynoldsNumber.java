package org.leat.hydraulics;

import org.leat.law.Physical;

/** Inertia over viscosity in a round pipe: {@code Re = V D / ν}, V mean velocity m/s, D bore m, ν m²/s. By definition. */
public final class ReynoldsNumber {

    private ReynoldsNumber() {}

    /** {@return Re, 1; for either direction of flow} */
    public static double of(double velocity, double bore, double kinematicViscosity) {
        return Math.abs(Physical.finite("velocity", velocity))
                * Physical.positive("bore", bore)
                / Physical.positive("kinematicViscosity", kinematicViscosity);
    }
}
