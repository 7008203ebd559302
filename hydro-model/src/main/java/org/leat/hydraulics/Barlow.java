package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Hoop stress in a tube under inner pressure: {@code s = p D/(2 e)}, Pa, with gauge pressure p [Pa], outside diameter D
 * [m] and wall e [m]; on the safe side of the exact stress in a thin tube.
 *
 * <p>Source: Barlow; EN 10216, EN 10217 (test pressure); for plastic pipe, whose standards take the mean diameter, see
 * {@link HoopStress}.
 */
public final class Barlow {

    private Barlow() {}

    /** {@return pressure, Pa, that makes a hoop stress} */
    public static double pressure(double stress, double wall, double outsideDiameter) {
        Physical.positive("stress", stress);
        Physical.within("wall", wall, Double.MIN_NORMAL, outsideDiameter / 2);
        return 2 * stress * wall / Physical.positive("outsideDiameter", outsideDiameter);
    }

    /**
     * {@return pressure, Pa, that a steel tube may hold: a share of yield in the wall left after tolerance and rust}
     *
     * <p>Half of yield is common practice; the loss by rust too, 1 to 2 mm.
     *
     * @param yieldStrength Pa
     * @param shareOfYield 0.5 unless something else is known
     * @param minimumWall nominal wall less its tolerance, m
     * @param corrosion wall lost over the life, m
     * @param outsideDiameter m
     */
    public static double workingPressure(
            double yieldStrength, double shareOfYield, double minimumWall, double corrosion, double outsideDiameter) {
        Physical.within("shareOfYield", shareOfYield, 0, 1);
        double left = minimumWall - Physical.notNegative("corrosion", corrosion);
        return left <= 0 ? 0 : pressure(yieldStrength * shareOfYield, left, outsideDiameter);
    }
}
