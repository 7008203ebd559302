package org.leat.design;

import org.apiguardian.api.API;

/** What stops the water from the jet. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What stops the water from the jet")
public enum StopWater {
    /** a plate swung into the jet. */
    @AlsoWritten("jet deflector")
    DEFLECTOR,
    /** a gate or needle valve shut by many turns. */
    SLOW_VALVE,
    /** a lever valve. */
    QUICK_VALVE,
    /** nothing. */
    NONE
}
