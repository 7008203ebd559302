package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Greatest hoop stress of a flat disc that spins: at the edge of its hole
 * {@code rho omega^2/4 ((3 + nu) b^2 + (1 - nu) a^2)}, without a hole at its centre
 * {@code rho omega^2 b^2 (3 + nu)/8}.
 *
 * <p>Symbols: {@code rho} density [kg/m3]; {@code omega} angular speed [rad/s], at runaway; {@code b} outer and {@code a}
 * hole radius [m]; {@code nu} Poisson's ratio [1]. Even a pinhole doubles the stress. Range: constant thickness, thin
 * against {@code b}, elastic; bolt holes need their own factor (about 2 to 3 beside the hole). Source: Timoshenko and
 * Goodier, Theory of Elasticity, rotating discs (from memory).
 */
public final class DiscStress {

    private DiscStress() {}

    /** {@return hoop stress at the edge of the hole [Pa]} */
    public static double withHole(
            double density, double angularSpeed, double outerRadius, double holeRadius, double poissonRatio) {
        Physical.positive("density", density);
        Physical.finite("angularSpeed", angularSpeed);
        Physical.positive("outerRadius", outerRadius);
        Physical.within("holeRadius", holeRadius, 0, outerRadius);
        Physical.within("poissonRatio", poissonRatio, 0, 0.5);
        double outer = (3 + poissonRatio) * outerRadius * outerRadius;
        double hole = (1 - poissonRatio) * holeRadius * holeRadius;
        return 0.25 * density * angularSpeed * angularSpeed * (outer + hole);
    }

    /** {@return stress at the centre of a disc without a hole [Pa]} */
    public static double solid(double density, double angularSpeed, double outerRadius, double poissonRatio) {
        return 0.5 * withHole(density, angularSpeed, outerRadius, 0, poissonRatio);
    }
}
