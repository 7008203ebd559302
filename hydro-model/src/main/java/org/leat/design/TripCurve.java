package org.leat.design;

/** Instantaneous trip of a breaker, as marked before its rated current. */
@About("Instantaneous trip of a breaker, as marked before its rated current")
public enum TripCurve {
    /** soonest, for electronics and long runs. */
    Z,
    /** soon, for long runs. */
    B,
    /** usual. */
    C,
    /** late, for loads that surge. */
    D
}
