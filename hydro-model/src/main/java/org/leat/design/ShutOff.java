package org.leat.design;

import org.apiguardian.api.API;

/** What shuts a nozzle. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What shuts a nozzle")
public enum ShutOff {
    /** a needle in the nozzle. */
    NEEDLE,
    /** a gate valve before it. */
    GATE_VALVE,
    /** a globe valve before it. */
    GLOBE_VALVE,
    /** a ball valve before it. */
    BALL_VALVE,
    /** a butterfly valve before it. */
    BUTTERFLY_VALVE
}
