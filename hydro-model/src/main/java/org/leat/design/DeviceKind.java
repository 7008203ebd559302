package org.leat.design;

/** What a protective device is. */
@About("What a protective device is")
public enum DeviceKind {
    /** fuse. */
    FUSE,
    /** circuit breaker. */
    BREAKER,
    /** switch or isolator. */
    SWITCH
}
