package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Instantaneous trip of a circuit breaker on direct current: from this multiple of its rated current it opens within 0.1 s.
 * Below it nothing is promised but the thermal trip, which may take a minute at 2.55 times the rating.
 *
 * <p>Curves by the greatest multiple at which they must trip: on alternating current Z 3, B 5, C 10, D 20 (IEC 60898-1 table
 * 7; Z by makers); on direct current B 7 and C 15 (IEC 60898-2), Z 4.5 and D 30 in the same proportion (IEC 60947-2 leaves
 * them to the maker). All from memory. Unlike a fuse a breaker is not said to limit what passes in those 0.1 s: the maker's
 * let-through goes before.
 */
public final class BreakerTrip {

    /** Of curve Z. */
    public static final double Z = 4.5;

    /** Of curve B. */
    public static final double B = 7;

    /** Of curve C. */
    public static final double C = 15;

    /** Of curve D. */
    public static final double D = 30;

    /** Longest time at and above the multiple, s. */
    public static final double TIME = 0.1;

    private BreakerTrip() {}

    /** {@return whether a current surely opens the breaker within {@link #TIME}} Currents in A; the multiple of a curve. */
    public static boolean surely(double current, double ratedCurrent, double multiple) {
        Physical.notNegative("current", current);
        Physical.positive("rated current", ratedCurrent);
        Physical.positive("multiple", multiple);
        return current >= multiple * ratedCurrent;
    }
}
