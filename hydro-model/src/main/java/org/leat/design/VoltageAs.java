package org.leat.design;

/** What a voltage reading says. */
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
