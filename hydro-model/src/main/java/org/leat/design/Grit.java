package org.leat.design;

/** How much sand the water brings to the nozzles. */
@About("How much sand the water brings to the nozzles")
public enum Grit {
    /** clear all year. */
    CLEAR,
    /** sand in floods only. */
    IN_FLOODS,
    /** sand most of the time. */
    ALWAYS
}
