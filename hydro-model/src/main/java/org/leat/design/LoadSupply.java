package org.leat.design;

import org.apiguardian.api.API;

/** What a load is fed from. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What a load is fed from")
public enum LoadSupply {
    /** alternating current. */
    @AlsoWritten("AC")
    INVERTER,
    /** the battery's direct current. */
    @AlsoWritten("DC")
    BUS
}
