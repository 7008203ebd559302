package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Independent uncertainties together: {@code u = √(u1² + u2² + …)}, each already multiplied with how strongly the result
 * follows it, all for the same confidence. ISO/IEC Guide 98-3 (GUM), 5.1.2.
 */
public final class Uncertainty {

    private Uncertainty() {}

    /** {@return the root of the sum of squares} */
    public static double rootSumSquare(double... parts) {
        double sum = 0;
        for (double part : parts) {
            Physical.finite("uncertainty", part);
            sum += part * part;
        }
        return Math.sqrt(sum);
    }
}
