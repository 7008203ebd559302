package org.leat.hydraulics;

import java.util.List;
import org.leat.law.Physical;

/**
 * One value from several measurements of it: {@code x = Σ(x_i/u_i²) / Σ(1/u_i²)}, u_i the half-width of each at the same
 * confidence; {@code u = S / √Σ(1/u_i²)}. Where the measurements differ by more than their half-widths explain, u is widened by
 * the Birge ratio {@code S = √(χ²/(n-1))} with {@code χ² = Σ((x_i - x) k/u_i)²}, k = 1.96 the half-width over the standard
 * uncertainty; S is never below one. R. T. Birge, Physical Review 40 (1932) 207; the weighted mean of textbooks. A single
 * measurement stands as it is. What is common to all of them, such as a wrong tape, is not in this.
 */
public final class WeightedMean {

    private static final double COVERAGE = 1.96;

    private WeightedMean() {}

    /**
     * {@return the value they give together}
     *
     * @param estimates at least one, each with a half-width above zero
     */
    public static Estimate of(List<Estimate> estimates) {
        double weights = 0;
        double sum = 0;
        for (Estimate estimate : estimates) {
            double weight = 1 / squared(half(estimate));
            weights += weight;
            sum += weight * estimate.value();
        }
        if (estimates.isEmpty()) {
            throw new IllegalArgumentException("nothing was measured");
        }
        double mean = sum / weights;
        return Estimate.of(mean, birgeRatio(estimates, mean) / Math.sqrt(weights));
    }

    /** {@return how many times wider than their half-widths the measurements are spread; at least one} */
    private static double birgeRatio(List<Estimate> estimates, double mean) {
        if (estimates.size() < 2) {
            return 1;
        }
        double chiSquared = 0;
        for (Estimate estimate : estimates) {
            chiSquared += squared((estimate.value() - mean) * COVERAGE / half(estimate));
        }
        return Math.max(1, Math.sqrt(chiSquared / (estimates.size() - 1)));
    }

    private static double half(Estimate estimate) {
        return Physical.positive("plusMinus", estimate.plusMinus().orElse(0));
    }

    private static double squared(double x) {
        return x * x;
    }
}
