package org.leat.design;

import org.apiguardian.api.API;

/** How much sand the water brings to the nozzles. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How much sand the water brings to the nozzles")
public enum Grit {
    /** clear all year. */
    CLEAR,
    /** sand in floods only. */
    IN_FLOODS,
    /** sand most of the time. */
    ALWAYS
}
