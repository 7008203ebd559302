package org.leat.hydraulics;

/**
 * Loss coefficient K of a ball valve, taken as a bored plug in a round pipe, against its opening, a quarter turn:
 *
 * <pre>
 * angle from open  65°  60°  55°  50°   45°   40°   35°   30°   25°   20°   15°   10°   5°
 * K                486  206  106  52.6  31.2  17.3  9.68  5.47  3.10  1.56  0.75  0.29  0.05
 * </pre>
 *
 * <p>Shut from 82.5° on. Source: Weisbach's measurements on a cock, repeated in King and Brater, Handbook of Hydraulics (from
 * memory); 5°, 10°, 20°, 40° and 60° read in Perry's Chemical Engineers' Handbook, table of fittings. Between 65° and 82.5°
 * {@code 1/√K} falls straight to nothing. A reduced bore shuts a few degrees earlier.
 */
public final class BallValveLoss {

    private static final double QUARTER_TURN = 90;
    private static final double SHUT = 82.5;

    /** Share of the quarter turn, from shut, that opens nothing. */
    static final double IDLE = 1 - SHUT / QUARTER_TURN;

    private static final PartOpenTable TABLE =
            new PartOpenTable(open(SHUT, 65, 60, 55, 50, 45, 40, 35, 30, 25, 20, 15, 10, 5, 0), new double[] {
                Double.POSITIVE_INFINITY,
                486,
                206,
                106,
                52.6,
                31.2,
                17.3,
                9.68,
                5.47,
                3.10,
                1.56,
                0.75,
                0.29,
                0.05,
                0.05
            });

    private BallValveLoss() {}

    /** Shares of a quarter turn that are open. */
    static double[] open(double... degreesFromOpen) {
        double[] openings = new double[degreesFromOpen.length];
        for (int i = 0; i < openings.length; i++) {
            openings[i] = 1 - degreesFromOpen[i] / QUARTER_TURN;
        }
        return openings;
    }

    /**
     * {@return K on the velocity in its bore; infinite where it is shut}
     *
     * @param opening share of a quarter turn that is open, 0 to 1
     */
    public static double coefficient(double opening) {
        return TABLE.coefficient(opening);
    }
}
