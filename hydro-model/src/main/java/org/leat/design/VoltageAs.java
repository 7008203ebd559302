package org.leat.design;

import org.apiguardian.api.API;

/** What a voltage reading says. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What a voltage reading says")
public enum VoltageAs {
    /** root of the mean square, as a meter shows it. */
    @AlsoWritten("effective")
    RMS,
    /** the highest instant. */
    PEAK,
    /** direct voltage. */
    @AlsoWritten("DC")
    DIRECT
}
