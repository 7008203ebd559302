package org.leat.design;

/** How the three windings are joined. */
@About("How the three windings are joined")
public enum Connection {
    /** three ends joined. */
    STAR,
    /** in a ring. */
    DELTA
}
