package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Head by a water-filled tube, step by step down the hill: {@code H = Σ step ± u √n}, u uncertainty of one step's reading, m;
 * steps err independently. By definition. Survey twice and hand the totals to {@link StudentT#mean} to see a step missed.
 */
public final class HeadByTube {

    private HeadByTube() {}

    /**
     * {@return head, m}
     *
     * @param readingPlusMinus uncertainty of one step at 95 %, m
     * @param steps fall of each, m; negative where the ground rises
     */
    public static Estimate head(double readingPlusMinus, double... steps) {
        if (steps.length == 0) {
            throw new IllegalArgumentException("no steps");
        }
        double sum = 0;
        for (double step : steps) {
            sum += Physical.finite("step", step);
        }
        double each = Physical.notNegative("readingPlusMinus", readingPlusMinus);
        return Estimate.of(sum, each * Math.sqrt(steps.length));
    }
}
