package org.leat.design;

/** What stops the water from the jet. */
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
