package org.leat.design;

import org.apiguardian.api.API;

/** How a pipe stands to the sun. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How a pipe stands to the sun")
public enum Sunlight {
    /** buried or under water. */
    @AlsoWritten("underground")
    BURIED,
    /** covered or in full shade. */
    @AlsoWritten({"shade", "in the shade"})
    SHADED,
    /** in the open sun. */
    @AlsoWritten({"full sun", "in the sun"})
    OPEN
}
