package org.leat.design;

import org.apiguardian.api.API;

/** How the conductors of one run lie to each other. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How the conductors of one run lie to each other")
public enum CoreArrangement {
    /** cores of one cable. */
    MULTICORE,
    /** single-core cables that touch. */
    SINGLE_CORES,
    /** bare or insulated wires apart from each other, as on poles. */
    OPEN_WIRE
}
