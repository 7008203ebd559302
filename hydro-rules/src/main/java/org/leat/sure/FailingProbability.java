package org.leat.sure;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Probability that a value is beyond its limit: p = Φ((value − limit)/u), the value normal about what was found. Reliability index
 * β = (limit − value)/u.
 *
 * <p>Source: JCGM 106:2012, 7 (from memory).
 */
final class FailingProbability {

    private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

    private FailingProbability() {}

    /**
     * {@return the probability}
     *
     * @param beyond value less limit, below zero where it holds
     * @param uncertainty standard uncertainty of that, above zero, same unit
     */
    static double of(double beyond, double uncertainty) {
        if (!(uncertainty > 0) || !Double.isFinite(beyond)) {
            throw new IllegalArgumentException(beyond + " by " + uncertainty);
        }
        return STANDARD.cumulativeProbability(beyond / uncertainty);
    }
}
