package org.leat.design;

/** Whether live parts can be touched. */
@About("Whether live parts can be touched")
public enum LiveParts {
    /** none without a tool. */
    INSULATED,
    /** some with a finger. */
    REACHABLE
}
