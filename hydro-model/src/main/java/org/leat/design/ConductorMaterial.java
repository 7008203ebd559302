package org.leat.design;

/** What a conductor is made of. */
@About("What a conductor is made of")
public enum ConductorMaterial {
    /** plain copper. */
    @AlsoWritten("Cu")
    COPPER,
    /** aluminium. */
    @AlsoWritten({"Al", "Alu", "aluminum"})
    ALUMINIUM
}
