package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Float over a measured reach: {@code Q = k A L / t}, k mean over surface velocity, A mean wetted cross-section m², L length of
 * the reach m, t mean time s. ISO 748, float method: k 0.84 to 0.90 in deep smooth channels; 0.6 to 0.75 in shallow rough
 * streams (common practice). k and A, not the watch, set the uncertainty: 15 % is good.
 */
public final class FloatGauging {

    private FloatGauging() {}

    /**
     * {@return flow, m³/s}
     *
     * @param area mean wetted cross-section, m²
     * @param length of the reach, m
     * @param surfaceFactor mean over surface velocity, above 0 to 1
     * @param relativeUncertainty of surface factor times area at 95 %, 1
     * @param times of the float, s, at least one
     */
    public static Estimate flow(
            double area, double length, double surfaceFactor, double relativeUncertainty, double... times) {
        Physical.positive("area", area);
        Physical.positive("length", length);
        Physical.within("surfaceFactor", surfaceFactor, Double.MIN_NORMAL, 1);
        return BucketGauging.over(
                surfaceFactor * area * length, Physical.notNegative("relativeUncertainty", relativeUncertainty), times);
    }
}
