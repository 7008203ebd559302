package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Air that keeps hydrogen from a charging battery below 4 % by a factor of five: Q = v q s n I, where v = 24 is the dilution,
 * q = 0.42·10⁻³ m³/(A h) the hydrogen of one ampere-hour, s = 5 the factor, n the cells and I the current that makes gas, A. The
 * standard rounds v q s to 0.05 m³/(A h); unrounded it is 0.0504. I is the gas current of the chemistry times the capacity; where
 * the source is not protected against failing high, it is the greatest current the source can give.
 *
 * <p>Natural draught wants two openings, low and high, of A = 28 Q each (cm², m³/h), that is 0.1 m/s. Nothing that glows or
 * sparks within d = 28.8 ∛(I) of a cell (mm, mA).
 *
 * <p>Source: IEC 62485-2:2010, 7.2 to 7.5 (formerly EN 50272-2; formula and opening read in reproductions, distance from memory).
 * Hydrogen explodes; local codes go before. SI units: Q in m³/s, A in m², d in m.
 */
public final class HydrogenVentilation {

    private static final double ROUNDED = 0.05 / 3600;
    private static final double UNROUNDED = 24 * 0.42e-3 * 5 / 3600;

    private HydrogenVentilation() {}

    /**
     * {@return current that makes gas, A, of one string}
     *
     * @param specific of the chemistry, A over A·s
     * @param capacity A·s
     */
    public static double gasCurrent(double specific, double capacity) {
        Physical.notNegative("specific gas current", specific);
        return specific * Physical.positive("capacity", capacity);
    }

    /** {@return air flow, m³/s, with the standard's rounded factor} */
    public static double airFlow(int cells, double gasCurrent) {
        return ROUNDED * cellAmperes(cells, gasCurrent);
    }

    /** {@return air flow, m³/s, with the factor unrounded, 0.8 % more} */
    public static double airFlowUnrounded(int cells, double gasCurrent) {
        return UNROUNDED * cellAmperes(cells, gasCurrent);
    }

    /** {@return area of each of the two openings, m²} */
    public static double openingArea(double airFlow) {
        return 28e-4 * 3600 * Physical.notNegative("air flow", airFlow);
    }

    /** {@return distance within which nothing may glow or spark, m} */
    public static double safeDistance(double gasCurrent) {
        return 28.8e-3 * Math.cbrt(1000 * Physical.notNegative("gas current", gasCurrent));
    }

    /**
     * {@return the same where several cells gas through one vent, m} A fixed half metre covers cells × current to 5.2 A only, hence
     * not equalising of a large cell.
     *
     * @param cells behind one vent: six of a 12 V block with a common one
     * @param gasCurrent A
     */
    public static double safeDistance(int cells, double gasCurrent) {
        return safeDistance(cellAmperes(cells, gasCurrent));
    }

    private static double cellAmperes(int cells, double gasCurrent) {
        Physical.positive("cells", cells);
        return cells * Physical.notNegative("gas current", gasCurrent);
    }
}
