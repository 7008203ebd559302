package org.leat.check;

/** On which side of a limit's own value people are safer. */
public enum Safer {
    /** A lower limit is the stricter one. */
    LOWER,
    /** A higher limit is the stricter one. */
    HIGHER,
    /** Nobody said: to move it either way is taken to be unsafe. */
    UNSAID
}
