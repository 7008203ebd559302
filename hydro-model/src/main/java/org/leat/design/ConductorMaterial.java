package org.leat.design;

import org.apiguardian.api.API;

/** What a conductor is made of. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What a conductor is made of")
public enum ConductorMaterial {
    /** plain copper. */
    @AlsoWritten("Cu")
    COPPER,
    /** aluminium. */
    @AlsoWritten({"Al", "Alu", "aluminum"})
    ALUMINIUM
}
