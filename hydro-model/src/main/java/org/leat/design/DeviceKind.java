package org.leat.design;

/** What a protective device is. */
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
