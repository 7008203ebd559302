package org.leat.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.leat.report.Wrapping;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Whether someone looks. */
final class Terminals {

    /** Columns of what no terminal shows, and the most that a line of text is given. */
    static final int WIDEST = Wrapping.WIDEST;

    private Terminals() {}

    /** {@return columns of the terminal that output goes to, at most {@link #WIDEST}; as many where it goes elsewhere} */
    static int width() {
        if (!terminal(1)) {
            return WIDEST;
        }
        UsageMessageSpec usage = CommandSpec.create().usageMessage().width(WIDEST);
        return Math.min(WIDEST, usage.autoWidth(true).width());
    }

    /** {@return whether both input and output are a terminal's} */
    @SuppressWarnings("SystemConsoleNull") // null up to Java 21; later its own method is asked
    static boolean forDialogue() {
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

    /** {@return whether errors go to a terminal and output elsewhere; false where the system does not tell} */
    static boolean forErrorsOnly() {
        return terminal(2) && !terminal(1);
    }

    private static boolean terminal(int stream) {
        try {
            Path target = Files.readSymbolicLink(Path.of("/proc/self/fd/" + stream));
            return target.startsWith("/dev/pts") || target.toString().startsWith("/dev/tty");
        } catch (IOException | InvalidPathException | UnsupportedOperationException e) {
            return false;
        }
    }
}
