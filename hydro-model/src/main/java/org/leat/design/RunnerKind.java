package org.leat.design;

import org.apiguardian.api.API;

/** How a runner turns the jet. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How a runner turns the jet")
public enum RunnerKind {
    /** split double buckets. */
    @AlsoWritten("Pelton wheel")
    PELTON,
    /** buckets the jet enters from the side. */
    @AlsoWritten("Turgo wheel")
    TURGO,
    /** simple round cups. */
    CUPS,
    /** flat paddles. */
    FLAT
}
