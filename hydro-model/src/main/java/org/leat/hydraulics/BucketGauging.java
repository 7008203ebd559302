package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Bucket and stopwatch: {@code Q = V / t}, V volume of the bucket m³, t mean filling time s. By definition. Uncertainty: the
 * times by {@link StudentT}, the volume on top. Common practice: fill for at least five seconds, three times or more.
 */
public final class BucketGauging {

    private BucketGauging() {}

    /**
     * {@return flow, m³/s}
     *
     * @param volume m³
     * @param volumePlusMinus m³, at 95 %; zero where it is exact
     * @param times to fill it, s, at least one
     */
    public static Estimate flow(double volume, double volumePlusMinus, double... times) {
        double relative =
                Physical.notNegative("volumePlusMinus", volumePlusMinus) / Physical.positive("volume", volume);
        return over(volume, relative, times);
    }

    /** A stretch over the mean time, with the stretch's own relative uncertainty. */
    static Estimate over(double stretch, double relative, double... times) {
        for (double time : times) {
            Physical.positive("time", time);
        }
        Estimate time = StudentT.mean(times);
        return time.times(stretch / (time.value() * time.value()), relative);
    }
}
