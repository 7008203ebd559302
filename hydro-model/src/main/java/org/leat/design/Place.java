package org.leat.design;

import org.apiguardian.api.API;

/** The parts that cables join. */
@API(status = API.Status.STABLE, since = "0.1")
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
