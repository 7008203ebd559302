package org.leat.design;

/** How a conductor is made, IEC 60228. */
@About("How a conductor is made, IEC 60228")
public enum Stranding {
    /** class 2. */
    @AlsoWritten("class 2")
    STRANDED,
    /** class 5. */
    @AlsoWritten({"class 5", "fine stranded"})
    FLEXIBLE
}
