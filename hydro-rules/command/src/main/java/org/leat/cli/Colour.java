package org.leat.cli;

import java.util.Map;
import org.leat.report.TextWriter.Colours;

/** When to colour text. */
enum Colour {
    AUTO,
    ALWAYS,
    NEVER;

    /** {@return the colours to use; NO_COLOR set to anything but nothing means none, unless asked for} */
    Colours colours(Map<String, String> environment) {
        return colours(environment, Terminals.forDialogue());
    }

    Colours colours(Map<String, String> environment, boolean terminal) {
        boolean wanted = switch (this) {
            case ALWAYS -> true;
            case NEVER -> false;
            case AUTO ->
                environment.getOrDefault("NO_COLOR", "").isEmpty()
                        && !environment.getOrDefault("TERM", "").equals("dumb")
                        && terminal;
        };
        return wanted ? Colours.TERMINAL : Colours.NONE;
    }
}
