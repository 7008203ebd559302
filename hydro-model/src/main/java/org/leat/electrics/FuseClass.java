package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Utilisation classes of fuse-links by the least current they surely break, over their rating. A full-range link breaks whatever
 * melts it; a back-up link that melts slowly below its least breaking current goes on arcing and may burst.
 *
 * <p>Source: IEC 60269-1 (first letter g full range, a partial range), 60269-2 (gG 1.6 from 16 A, aM 6.3), 60269-6 (gPV 1.45),
 * 60269-4 (aR by the maker, here 4 by common practice); all from memory. The maker's sheet goes before.
 */
public enum FuseClass {
    /** general purpose, full range. */
    GG(1.6, true),
    /** photovoltaic direct current, full range. */
    GPV(1.45, true),
    /** motor circuits, back-up only. */
    AM(6.3, false),
    /** semiconductors, back-up only. */
    AR(4, false);

    private final double leastBreaking;
    private final boolean fullRange;

    FuseClass(double leastBreaking, boolean fullRange) {
        this.leastBreaking = leastBreaking;
        this.fullRange = fullRange;
    }

    /** {@return least current that it surely breaks over its rating, 1} A full-range link: its conventional fusing current. */
    public double leastBreaking() {
        return leastBreaking;
    }

    /** {@return whether it protects against overload by itself; else another device must break lesser currents} */
    public boolean fullRange() {
        return fullRange;
    }

    /** {@return whether a current, A, surely opens a link of a rating, A, in the end and without bursting it} */
    public boolean breaks(double current, double rating) {
        return Physical.notNegative("current", current) >= leastBreaking * Physical.positive("rating", rating);
    }
}
