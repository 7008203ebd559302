package org.leat.cli;

import java.io.Console;
import java.util.Map;
import org.leat.report.Colours;

/** When to colour text. */
enum Colour {
    AUTO,
    ALWAYS,
    NEVER;

    /** {@return the colours to use; NO_COLOR set to anything but nothing means none, unless asked for} */
    Colours colours(Map<String, String> environment) {
        return colours(environment, terminal());
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

    @SuppressWarnings("SystemConsoleNull") // null up to Java 21; later its own method is asked
    private static boolean terminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            // from Java 22 on there is a console without a terminal too, and a method that tells
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }
}
