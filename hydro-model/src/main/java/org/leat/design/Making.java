package org.leat.design;

import org.apiguardian.api.API;

/** How a part was made. */
@API(status = API.Status.STABLE, since = "0.1")
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
