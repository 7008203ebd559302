package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Frazil ice, which chokes screens: to be reckoned with in open, turbulent water on clear nights when the air reaches −6 °C or less. The
 * water is supercooled by less than 0.1 K (a newer text: a few tenths), which no common thermometer shows.
 *
 * <p>Source: an encyclopaedia's article on frazil ice (read in two issues).
 */
public final class FrazilIce {

    /** Air temperature at and below which it is to be reckoned with, K. */
    public static final double AIR = 273.15 - 6;

    /** Greatest supercooling of the water it forms in, K. */
    public static final double SUPERCOOLING = 0.1;

    private FrazilIce() {}

    /** {@return whether it is to be reckoned with at an air temperature, K} */
    public static boolean possible(double air) {
        return Physical.positive("air", air) <= AIR;
    }
}
