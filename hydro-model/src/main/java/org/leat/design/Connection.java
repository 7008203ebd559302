package org.leat.design;

import org.apiguardian.api.API;

/** How the three windings are joined. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How the three windings are joined")
public enum Connection {
    /** three ends joined. */
    @AlsoWritten({"Y", "wye"})
    STAR,
    /** in a ring. */
    @AlsoWritten({"triangle", "Δ", "mesh"})
    DELTA
}
