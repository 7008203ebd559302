package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Area left open by a needle in a nozzle against its travel: {@code A/A0 = s (2 − s)}, s the share of its travel that is open. The
 * ring between a cone and a round hole grows evenly at first and less and less until the needle is out; this is its form for a
 * travel that ends where more brings nothing, so that the area falls twice as fast at the end as on average.
 *
 * <p>Source: geometry of a cone in a hole, {@code A = π s' sin α (d − s' sin α cos α)}, as in any text on the Pelton nozzle. A
 * shorter travel is gentler; every real contour between is milder at the end.
 */
public final class NeedleOpening {

    private NeedleOpening() {}

    /**
     * {@return area over the area of the open nozzle}
     *
     * @param opening share of its travel that is open, 0 to 1
     */
    public static double share(double opening) {
        Physical.within("opening", opening, 0, 1);
        return opening * (2 - opening);
    }
}
