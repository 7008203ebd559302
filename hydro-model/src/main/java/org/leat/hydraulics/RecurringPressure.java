package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * PVC-U pipe under a pressure that comes and goes, as with every stop: its range, highest less lowest, is at most half of the static
 * rating, <em>and</em> the highest is never above the rating. A fall below the atmosphere counts: the lowest may be negative.
 *
 * <p>Later guidance (a UK water industry note of 1999) calls such advice extremely conservative, and asks no reduction at all for
 * high-toughness polyethylene, whose surge and collapse are judged all the same. Source: BS CP 312, as a paper on surge and fatigue
 * reports it (read).
 */
public final class RecurringPressure {

    /** Greatest range over the static rating. */
    public static final double RANGE = 0.5;

    /** Greatest highest pressure over the static rating. */
    public static final double HIGHEST = 1;

    /** What high-toughness polyethylene keeps of its rating under cycles: all. */
    public static final double POLYETHYLENE = 1;

    private RecurringPressure() {}

    /** {@return range over what is allowed, 1: above 1 it is too great} Pressures above the atmosphere's, Pa. */
    public static double rangeShare(double highest, double lowest, double rating) {
        Physical.finite("lowest", lowest);
        Physical.within("highest", highest, lowest, Double.MAX_VALUE);
        return (highest - lowest) / (RANGE * Physical.positive("rating", rating));
    }

    /** {@return whether both hold} */
    public static boolean withstands(double highest, double lowest, double rating) {
        return rangeShare(highest, lowest, rating) <= 1 && highest <= HIGHEST * rating;
    }
}
