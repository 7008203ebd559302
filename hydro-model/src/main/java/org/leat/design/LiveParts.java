package org.leat.design;

import org.apiguardian.api.API;

/** Whether live parts can be touched. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Whether live parts can be touched")
public enum LiveParts {
    /** none without a tool. */
    INSULATED,
    /** some with a finger. */
    REACHABLE
}
