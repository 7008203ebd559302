package org.leat.hydraulics;

/**
 * Coefficients of common outlets, for free jets at high Reynolds number. Values from memory of Idelchik, Handbook of
 * Hydraulic Resistance, section 11, and White, Fluid Mechanics, 6.12; a made nozzle differs by 1 to 2 %.
 */
public enum NozzleKind {
    /** A smooth bore that narrows gently and ends in a short straight: Cv 0.98 (0.97 to 0.98), Cc 1 (0.95 to 1). */
    SMOOTH_CONVERGING(0.98, 1.0),
    /** A hole with a sharp edge in a thin plate or cap: Cv 0.98, Cc 0.62, discharge 0.61. */
    SHARP_HOLE(0.98, 0.62),
    /** A tube two to three bores long with a sharp entry, running full: Cv 0.82, Cc 1. */
    SHORT_TUBE(0.82, 1.0);

    private final double velocityCoefficient;
    private final double contractionCoefficient;

    NozzleKind(double velocityCoefficient, double contractionCoefficient) {
        this.velocityCoefficient = velocityCoefficient;
        this.contractionCoefficient = contractionCoefficient;
    }

    /** {@return jet velocity over {@code √(2gH)}} */
    public double velocityCoefficient() {
        return velocityCoefficient;
    }

    /** {@return jet area over bore area} */
    public double contractionCoefficient() {
        return contractionCoefficient;
    }

    /** {@return flow over {@code A √(2gH)}: the product of the two} */
    public double dischargeCoefficient() {
        return velocityCoefficient * contractionCoefficient;
    }
}
