package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Usual number of buckets on a wheel of split double buckets: {@code z = D/(2 d) + 15}, rounded up.
 *
 * <p>Symbols: {@code D} pitch diameter [m]; {@code d} jet diameter [m]. An empirical rule without a stated range; seen
 * used from {@code D/d} 6 to 30. Whether jet water passes between the buckets is asked of {@link LeastBucketCount}.
 * Source: Taygun 1946, quoted by Nechleba and later texts (from memory).
 */
public final class TaygunBucketCount {

    private TaygunBucketCount() {}

    /** {@return the rule's number before rounding [1]} */
    public static double of(double pitchDiameter, double jetDiameter) {
        Physical.positive("pitchDiameter", pitchDiameter);
        Physical.positive("jetDiameter", jetDiameter);
        return pitchDiameter / (2 * jetDiameter) + 15;
    }

    /** {@return the whole number of buckets} */
    public static int whole(double pitchDiameter, double jetDiameter) {
        return (int) Math.ceil(of(pitchDiameter, jetDiameter) - 1e-9);
    }
}
