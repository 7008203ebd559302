package org.leat.electrics;

/** How the six diodes of a bridge share the current over a sixth of a period. */
public enum ConductionMode {
    /** The peak line voltage does not reach the bus: no current. */
    NONE,
    /** Two diodes at a time, with pauses without current. */
    ISOLATED_PULSES,
    /** Pulses whose end overlaps with the next phase's beginning; the current still pauses. */
    OVERLAPPING_PULSES,
    /** Two diodes, and three while one phase takes over from another. */
    COMMUTATION,
    /** Three diodes at every instant. */
    FULL
}
