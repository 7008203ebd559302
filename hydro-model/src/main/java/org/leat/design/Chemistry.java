package org.leat.design;

/** What a battery is made of. */
@About("What a battery is made of")
public enum Chemistry {
    /** open cells with liquid acid. */
    FLOODED_LEAD_ACID,
    /** sealed, acid in glass mat. */
    AGM_LEAD_ACID,
    /** sealed, acid as gel. */
    GEL_LEAD_ACID,
    /** LiFePO4. */
    LITHIUM_IRON_PHOSPHATE,
    /** lithium with nickel, manganese or cobalt. */
    LITHIUM_ION
}
