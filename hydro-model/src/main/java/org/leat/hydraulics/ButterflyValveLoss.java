package org.leat.hydraulics;

/**
 * Loss coefficient K of a butterfly valve in a round pipe against its opening, a quarter turn:
 *
 * <pre>
 * angle from open  70°  65°  60°  55°   50°   45°   40°   35°   30°   25°   20°   15°   10°   5°
 * K                751  256  118  58.8  32.6  18.7  10.8  6.22  3.91  2.51  1.54  0.90  0.52  0.24
 * </pre>
 *
 * <p>Source: Weisbach's measurements on a throttle disc, repeated in King and Brater, Handbook of Hydraulics (from memory); 5°,
 * 10°, 20°, 40° and 60° read in Perry's Chemical Engineers' Handbook, table of fittings. Beyond 70° {@code 1/√K} falls straight to
 * nothing at 90°.
 */
public final class ButterflyValveLoss {

    private static final PartOpenTable TABLE = new PartOpenTable(
            BallValveLoss.open(90, 70, 65, 60, 55, 50, 45, 40, 35, 30, 25, 20, 15, 10, 5, 0), new double[] {
                Double.POSITIVE_INFINITY,
                751,
                256,
                118,
                58.8,
                32.6,
                18.7,
                10.8,
                6.22,
                3.91,
                2.51,
                1.54,
                0.90,
                0.52,
                0.24,
                0.2
            });

    private ButterflyValveLoss() {}

    /**
     * {@return K on the velocity in its bore; infinite where it is shut}
     *
     * @param opening share of a quarter turn that is open, 0 to 1
     */
    public static double coefficient(double opening) {
        return TABLE.coefficient(opening);
    }
}
