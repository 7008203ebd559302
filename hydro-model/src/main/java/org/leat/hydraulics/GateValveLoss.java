package org.leat.hydraulics;

/**
 * Loss coefficient K of a gate valve in a round pipe against its opening, the lift of the gate over the bore:
 *
 * <pre>
 * opening 1/8   1/4   3/8   1/2   5/8   3/4   7/8   1
 * K       97.8  17.0  5.52  2.06  0.81  0.26  0.12  0.1
 * </pre>
 *
 * <p>Source: Weisbach's measurements of 1842 to 1855, repeated in King and Brater, Handbook of Hydraulics (from memory; the last
 * two points raised from 0.07 and 0 so that K falls no further than that of an open valve). Read beside it: Perry's Chemical
 * Engineers' Handbook, table of fittings, 24 at 1/4, 4.5 at 1/2, 0.9 at 3/4, 0.17 open: a valve that throttles a little earlier.
 * Below 1/8 no measurement: {@code 1/√K} falls straight to nothing, as the area of a slit does or faster.
 */
public final class GateValveLoss {

    private static final PartOpenTable TABLE = new PartOpenTable(
            new double[] {0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1},
            new double[] {Double.POSITIVE_INFINITY, 97.8, 17.0, 5.52, 2.06, 0.81, 0.26, 0.12, 0.1});

    private GateValveLoss() {}

    /**
     * {@return K on the velocity in its bore; infinite where it is shut}
     *
     * @param opening share of its travel that is open, 0 to 1
     */
    public static double coefficient(double opening) {
        return TABLE.coefficient(opening);
    }
}
