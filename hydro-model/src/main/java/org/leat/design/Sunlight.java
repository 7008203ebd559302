package org.leat.design;

/** How a pipe stands to the sun. */
@About("How a pipe stands to the sun")
public enum Sunlight {
    /** buried or under water. */
    @AlsoWritten("underground")
    BURIED,
    /** covered or in full shade. */
    @AlsoWritten({"shade", "in the shade"})
    SHADED,
    /** in the open sun. */
    @AlsoWritten({"full sun", "in the sun"})
    OPEN
}
