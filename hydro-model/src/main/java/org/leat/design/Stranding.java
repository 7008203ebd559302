package org.leat.design;

/** How a conductor is made, IEC 60228. */
@About("How a conductor is made, IEC 60228")
public enum Stranding {
    /** class 2. */
    STRANDED,
    /** class 5. */
    FLEXIBLE
}
