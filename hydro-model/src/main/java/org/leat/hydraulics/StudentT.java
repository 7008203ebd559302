package org.leat.hydraulics;

import org.apache.commons.math3.distribution.TDistribution;
import org.leat.law.Physical;

/**
 * Repeated readings: {@code mean ± t s/√n}, s their standard deviation, t the two-sided 95 % quantile of Student's
 * distribution with n - 1 degrees of freedom. Holds for readings that scatter independently about the true value; an error
 * common to all is not seen. ISO/IEC Guide 98-3 (GUM), 4.2.3 and table G.2.
 */
public final class StudentT {

    private StudentT() {}

    /** {@return the two-sided 95 % quantile, 1} */
    public static double factor(int degreesOfFreedom) {
        if (degreesOfFreedom < 1) {
            throw new IllegalArgumentException("needs a degree of freedom, not " + degreesOfFreedom);
        }
        return new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability(0.975);
    }

    /** {@return the mean of at least one reading; without a half-width for a single reading} */
    public static Estimate mean(double... readings) {
        if (readings.length == 0) {
            throw new IllegalArgumentException("no readings");
        }
        double sum = 0;
        for (double reading : readings) {
            sum += Physical.finite("reading", reading);
        }
        int n = readings.length;
        double mean = sum / n;
        if (n == 1) {
            return Estimate.alone(mean);
        }
        double squares = 0;
        for (double reading : readings) {
            squares += (reading - mean) * (reading - mean);
        }
        return Estimate.of(mean, factor(n - 1) * Math.sqrt(squares / (n - 1) / n));
    }
}
