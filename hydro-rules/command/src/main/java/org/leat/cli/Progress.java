package org.leat.cli;

import java.io.PrintWriter;

/** One line that says how far a long run is, written over itself and wiped out at the end. */
final class Progress {

    private static final int LONG_RUN = 4;
    private static final int STEP = 1;

    private final PrintWriter err;
    private final int total;
    private final boolean shown;
    private int done;
    private int width;

    Progress(PrintWriter err, int total, boolean wanted) {
        this.err = err;
        this.total = total;
        this.shown = wanted && total >= LONG_RUN;
    }

    /** One more design is done. */
    void step() {
        done++;
        if (shown && done % STEP == 0) {
            String line = "leat: " + done + " of " + total + " designs";
            width = line.length();
            err.print("\r" + line);
            err.flush();
        }
    }

    /** Leaves the line as if nothing had been there. */
    void end() {
        if (width > 0) {
            err.print("\r" + " ".repeat(width) + "\r");
            err.flush();
        }
    }
}
