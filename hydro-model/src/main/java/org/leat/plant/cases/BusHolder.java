package org.leat.plant.cases;

import org.apiguardian.api.API;

/** What keeps the bus from rising further in a situation. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum BusHolder {
    /** the battery, which takes what comes. */
    BATTERY,
    /** a tracking regulator, which chooses the voltage. */
    REGULATOR,
    /** the dump load: at the voltage that switches it on, or at the one at which it takes all. */
    DUMP_LOAD,
    /** nothing: the wheel runs away and the bus follows it. */
    NOTHING
}
