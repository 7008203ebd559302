package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Share of the static strength that may come and go at every bucket passing for years, and of a printed part's
 * strength that is left across its layers.
 *
 * <p>Without a test: printed plastic in water {@link #PRINTED_WET}, moulded or cast plastic {@link #MOULDED}; stress
 * across layers {@link #ACROSS_LAYERS} of that along them. Static stress from a jam: {@link #STATIC}. All shares [1] at
 * 10 to 1000 million cycles. Source: common practice; papers on printed tests give 0.3 to 0.9 across layers, texts on
 * polymer fatigue 0.2 to 0.3 for moulded bars at 10 million cycles. Ask for a test bar of the same print before trusting
 * more.
 */
public final class FatigueAllowance {

    private FatigueAllowance() {}

    /** Fatigue strength over static strength: printed, wet, not tested. */
    public static final double PRINTED_WET = 0.12;

    /** Fatigue strength over static strength: moulded or cast plastic. */
    public static final double MOULDED = 0.25;

    /** Strength across over strength along printed layers, not tested. */
    public static final double ACROSS_LAYERS = 0.4;

    /** Share of the static strength that a jammed bucket may see. */
    public static final double STATIC = 0.5;

    /**
     * {@return stress allowed at every passing [Pa]}
     *
     * @param strength static, in the direction of the stress [Pa]
     * @param fatigueRatio fatigue over static strength [1]
     * @param wetFactor strength wet over dry [1]
     * @param thermalFactor strength warm over at room temperature, as {@link ThermalDerating} [1]
     */
    public static double stress(double strength, double fatigueRatio, double wetFactor, double thermalFactor) {
        Physical.positive("strength", strength);
        Physical.within("fatigueRatio", fatigueRatio, 0, 1);
        Physical.within("wetFactor", wetFactor, 0, 1);
        Physical.within("thermalFactor", thermalFactor, 0, 1);
        return strength * fatigueRatio * wetFactor * thermalFactor;
    }
}
