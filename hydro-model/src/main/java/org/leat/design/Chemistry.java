package org.leat.design;

import org.apiguardian.api.API;

/** What a battery is made of. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What a battery is made of")
public enum Chemistry {
    /** open cells with liquid acid. */
    @AlsoWritten({"flooded", "wet cell", "OPzS", "flooded lead"})
    FLOODED_LEAD_ACID,
    /** sealed, acid in glass mat. */
    @AlsoWritten({"AGM", "AGM lead"})
    AGM_LEAD_ACID,
    /** sealed, acid as gel. */
    @AlsoWritten({"gel", "OPzV", "lead gel", "gel lead"})
    GEL_LEAD_ACID,
    /** LiFePO4. */
    @AlsoWritten({"LiFePO4", "LiFePO₄", "LFP", "lithium ferro phosphate"})
    LITHIUM_IRON_PHOSPHATE,
    /** lithium with nickel, manganese or cobalt. */
    @AlsoWritten({"Li ion", "NMC"})
    LITHIUM_ION
}
