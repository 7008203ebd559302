package org.leat.hydraulics;

/**
 * Loss coefficient K of a globe valve with a flat disc against its opening, the lift of the disc over its whole lift: 6 open, 8.5
 * at half; below half {@code 1/√K} falls straight to nothing, as the area of the ring under the disc does.
 *
 * <p>Source: Perry's Chemical Engineers' Handbook, table of fittings, globe valve with composition seat (read). A plug disc (9
 * open, 13 at 3/4, 36 at 1/2, 112 at 1/4) throttles earlier and shuts the flow more gently.
 */
public final class GlobeValveLoss {

    private static final PartOpenTable TABLE =
            new PartOpenTable(new double[] {0, 0.5, 1}, new double[] {Double.POSITIVE_INFINITY, 8.5, 6});

    private GlobeValveLoss() {}

    /**
     * {@return K on the velocity in its bore; infinite where it is shut}
     *
     * @param opening share of its lift that is open, 0 to 1
     */
    public static double coefficient(double opening) {
        return TABLE.coefficient(opening);
    }
}
