package org.leat.design;

/** How the conductors of one run lie to each other. */
@About("How the conductors of one run lie to each other")
public enum CoreArrangement {
    /** cores of one cable. */
    MULTICORE,
    /** single-core cables that touch. */
    SINGLE_CORES,
    /** bare or insulated wires apart from each other, as on poles. */
    OPEN_WIRE
}
