package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Settled temperature behind thermal resistances in series: T_j = T_a + P ΣR. Junction to air for a bridge (one package:
 * resistances of the whole bridge), winding to air for an alternator.
 *
 * <p>Source: heat conduction; the usual electrical analogue.
 */
public final class JunctionTemperature {

    private JunctionTemperature() {}

    /**
     * {@return the temperature, °C}
     *
     * @param ambient of the air around, °C
     * @param heat W
     * @param resistance sum from junction to air, K/W
     */
    public static double of(double ambient, double heat, double resistance) {
        return ambient + Physical.notNegative("heat", heat) * Physical.notNegative("thermal resistance", resistance);
    }

    /**
     * {@return the largest thermal resistance that keeps a limit, K/W; nil or below where none does}
     *
     * @param ambient °C
     * @param heat W, above nil
     * @param limit °C
     */
    public static double largestResistance(double ambient, double heat, double limit) {
        return (limit - ambient) / Physical.positive("heat", heat);
    }
}
