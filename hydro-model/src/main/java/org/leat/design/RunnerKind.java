package org.leat.design;

/** How a runner turns the jet. */
@About("How a runner turns the jet")
public enum RunnerKind {
    /** split double buckets. */
    PELTON,
    /** buckets the jet enters from the side. */
    TURGO,
    /** simple round cups. */
    CUPS,
    /** flat paddles. */
    FLAT
}
