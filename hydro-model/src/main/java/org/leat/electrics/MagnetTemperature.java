package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Flux of a magnet against temperature: ψ(T) = ψ20 (1 + α (T − 20)). NdFeB α ≈ −0.0012 /K, ferrite ≈ −0.002 /K
 * (magnet handbooks, from memory). Reversible part only: above the grade's limit flux is lost for good. Coldest magnets
 * give the highest voltage. Range −60 to 200 °C.
 */
public final class MagnetTemperature {

    /** Reversible coefficient of neodymium magnets, 1/K; from memory, −0.0011 to −0.0012 by grade. */
    public static final double NEODYMIUM = -0.0012;

    /** Reversible coefficient of ferrite magnets, 1/K; from memory. */
    public static final double FERRITE = -0.002;

    private MagnetTemperature() {}

    /**
     * {@return flux over flux at 20 °C}
     *
     * @param coefficient α, below zero, 1/K
     * @param celsius magnet temperature, °C
     */
    public static double factor(double coefficient, double celsius) {
        Physical.within("flux coefficient", coefficient, -0.004, 0);
        Physical.within("magnet temperature", celsius, -60, 200);
        return 1 + coefficient * (celsius - 20);
    }
}
