package org.leat.design;

import org.apiguardian.api.API;

/** How a conductor is made, IEC 60228. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How a conductor is made, IEC 60228")
public enum Stranding {
    /** class 2. */
    @AlsoWritten("class 2")
    STRANDED,
    /** class 5. */
    @AlsoWritten({"class 5", "fine stranded"})
    FLEXIBLE
}
