package org.leat.design;

/** How a part was made. */
@About("How a part was made")
public enum Making {
    /** printed in layers. */
    @AlsoWritten("3D printed")
    PRINTED,
    /** cast or moulded. */
    CAST,
    /** machined or formed. */
    MACHINED
}
