package org.leat.design;

import org.apiguardian.api.API;

/** What a protective device is. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What a protective device is")
public enum DeviceKind {
    /** fuse. */
    FUSE,
    /** circuit breaker. */
    @AlsoWritten({"circuit breaker", "MCB"})
    BREAKER,
    /** switch or isolator. */
    @AlsoWritten({"isolator", "disconnector"})
    SWITCH
}
