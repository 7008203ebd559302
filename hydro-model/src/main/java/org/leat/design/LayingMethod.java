package org.leat.design;

/** Reference methods of IEC 60364-5-52. */
@About("Reference methods of IEC 60364-5-52")
public enum LayingMethod {
    /** in conduit or trunking on a wall. */
    B2,
    /** clipped direct to a surface. */
    C
}
