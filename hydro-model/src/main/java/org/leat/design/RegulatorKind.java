package org.leat.design;

import org.apiguardian.api.API;

/** What a charge regulator does when the battery is full. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What a charge regulator does when the battery is full")
public enum RegulatorKind {
    /** there is none. */
    NONE,
    /** it disconnects or throttles the source. */
    SERIES,
    /** it diverts the surplus into a dump load. */
    @AlsoWritten("diversion")
    SHUNT,
    /** it chooses the voltage of most power and throttles when full. */
    @AlsoWritten({"MPPT", "MPP", "maximum power point tracking"})
    TRACKING
}
