package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Flow of a full pipe that runs out at its lower end by gravity alone, as after a break or when it is drained: the Hazen-Williams
 * form of air valve practice, {@code Q = 0.0007872 C √(S D⁵)} in ft³/s and inches, slope S, C 110. A vent must let in as much air.
 *
 * <p>Range: slopes above nil to 1, water; about 3 % below Darcy with f 0.02. Source: an air valve maker's notes (read), as AWWA M51.
 */
public final class BurstFlow {

    /** C of the practice. */
    public static final double USUAL = 110;

    private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;
    private static final double INCH = 0.0254;

    private BurstFlow() {}

    /** {@return flow, m³/s, of a bore, m, on a slope} */
    public static double of(double coefficient, double slope, double bore) {
        Physical.positive("coefficient", coefficient);
        Physical.within("slope", slope, Double.MIN_NORMAL, 1);
        double inches = Physical.positive("bore", bore) / INCH;
        return 0.0007872 * coefficient * Math.sqrt(slope * Math.pow(inches, 5)) * CUBIC_FOOT;
    }
}
