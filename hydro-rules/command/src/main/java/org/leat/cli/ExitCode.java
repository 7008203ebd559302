package org.leat.cli;

/** Exit codes; with several the highest wins. */
final class ExitCode {

    /** nothing at or above the level asked for. */
    static final int NOTHING = 0;
    /** something at or above it. */
    static final int FOUND = 1;
    /** the call or the settings are wrong. */
    static final int CALL_WRONG = 2;
    /** a file could not be read as a design. */
    static final int UNREADABLE = 3;
    /** a rule broke, or something was not judged that was asked to be. */
    static final int NOT_JUDGED = 4;

    private ExitCode() {}
}
