package org.leat.design;

import org.apiguardian.api.API;

/** Instantaneous trip of a breaker, as marked before its rated current. */
@API(status = API.Status.STABLE, since = "0.1")
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
