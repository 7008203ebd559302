package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Outer overpressure at which a free round pipe collapses: {@code p = 2 E/((1 − ν²)(SDR − 1)³)}, Pa, with the modulus E [Pa]
 * for the duration of the load, Poisson ratio ν and outside diameter over wall SDR.
 *
 * <p>Source: Bresse and Lévy; PPI Handbook of PE Pipe, ch. 6; AWWA M55. For a pipe without support by soil (on the safe
 * side of a buried one) and round; see {@link OvalityFactor}. An older American form, 2.32 E/SDR³, is 30 % lower at SDR 11.
 */
public final class RingBuckling {

    private RingBuckling() {}

    /** {@return critical pressure of a round pipe, Pa} */
    public static double critical(double modulus, double poissonRatio, double sdr) {
        Physical.positive("modulus", modulus);
        double nu = Physical.within("poissonRatio", poissonRatio, 0, 0.5);
        double slenderness = Physical.within("sdr", sdr, 3, 10_000) - 1;
        return 2 * modulus / ((1 - nu * nu) * slenderness * slenderness * slenderness);
    }

    /**
     * {@return pressure allowed from outside, Pa}
     *
     * @param ovality greatest deviation of the diameter from its mean over the mean
     * @param safetyFactor 2 to 2.5 (AWWA M55; PPI)
     */
    public static double allowed(double modulus, double poissonRatio, double sdr, double ovality, double safetyFactor) {
        return critical(modulus, poissonRatio, sdr)
                * OvalityFactor.factor(ovality)
                / Physical.within("safetyFactor", safetyFactor, 1, 100);
    }

    /**
     * {@return greatest SDR, outside diameter over wall, that stands a pressure from outside} The inverse of {@link #allowed}.
     *
     * @param pressure from outside, Pa
     */
    public static double greatestRatio(
            double modulus, double poissonRatio, double ovality, double safetyFactor, double pressure) {
        Physical.positive("pressure", pressure);
        double atTwo = 2 * Physical.positive("modulus", modulus) / (1 - poissonRatio * poissonRatio);
        double share = OvalityFactor.factor(ovality) / Physical.within("safetyFactor", safetyFactor, 1, 100);
        return 1 + Math.cbrt(atTwo * share / pressure);
    }
}
