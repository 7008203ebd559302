package org.leat.design;

/** The parts that cables join. */
@About("The parts that cables join")
public enum Place {
    /** alternator terminals. */
    ALTERNATOR,
    /** bridge output. */
    RECTIFIER,
    /** charge regulator. */
    REGULATOR,
    /** battery poles. */
    BATTERY,
    /** dump load. */
    DUMP_LOAD,
    /** inverter input. */
    INVERTER,
    /** direct-current loads. */
    LOADS
}
