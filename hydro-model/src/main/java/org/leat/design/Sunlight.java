package org.leat.design;

/** How a pipe stands to the sun. */
@About("How a pipe stands to the sun")
public enum Sunlight {
    /** buried or under water. */
    BURIED,
    /** covered or in full shade. */
    SHADED,
    /** in the open sun. */
    OPEN
}
