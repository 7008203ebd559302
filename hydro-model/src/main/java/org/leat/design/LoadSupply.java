package org.leat.design;

/** What a load is fed from. */
@About("What a load is fed from")
public enum LoadSupply {
    /** alternating current. */
    @AlsoWritten("AC")
    INVERTER,
    /** the battery's direct current. */
    @AlsoWritten("DC")
    BUS
}
