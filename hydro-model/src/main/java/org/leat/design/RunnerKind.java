package org.leat.design;

/** How a runner turns the jet. */
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
