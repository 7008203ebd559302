package org.leat.design;

/** How the three windings are joined. */
@About("How the three windings are joined")
public enum Connection {
    /** three ends joined. */
    @AlsoWritten({"Y", "wye"})
    STAR,
    /** in a ring. */
    @AlsoWritten({"triangle", "Δ", "mesh"})
    DELTA
}
