package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * How a pipe is held along its length, and the factor c1 that follows for the wave speed in a thin wall with Poisson
 * ratio ν: {@code 1 − ν/2}, {@code 1 − ν²} or {@code 1}.
 *
 * <p>Source: Wylie and Streeter, Fluid Transients in Systems, ch. 2. An older set is still in use (ASCE 1975; Parmakian):
 * {@code 5/4 − ν} for a pipe held upstream, {@code 1 − ν/2} for expansion joints; whoever compares wave speeds must know
 * which set was taken. Ours is the first.
 */
public enum WallRestraint {
    /** Held at its upper end only. */
    UPSTREAM_ONLY,
    /** Held against any movement along its axis, as when buried or clamped. */
    NO_AXIAL_MOVEMENT,
    /** Expansion joints throughout. */
    EXPANSION_JOINTS;

    /** {@return c1, ratio} */
    public double factor(double poissonRatio) {
        double nu = Physical.within("poissonRatio", poissonRatio, 0, 0.5);
        return switch (this) {
            case UPSTREAM_ONLY -> 1 - nu / 2;
            case NO_AXIAL_MOVEMENT -> 1 - nu * nu;
            case EXPANSION_JOINTS -> 1;
        };
    }

    /** {@return c1 by the older set, for comparison with texts that use it} */
    public double olderFactor(double poissonRatio) {
        double nu = Physical.within("poissonRatio", poissonRatio, 0, 0.5);
        return switch (this) {
            case UPSTREAM_ONLY -> 1.25 - nu;
            case NO_AXIAL_MOVEMENT -> 1 - nu * nu;
            case EXPANSION_JOINTS -> 1 - nu / 2;
        };
    }
}
