package org.leat.plant.cases;

/** What keeps the bus from rising further in a situation. */
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
