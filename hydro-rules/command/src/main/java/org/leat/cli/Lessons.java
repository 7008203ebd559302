package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import org.leat.report.Learned;
import org.leat.report.PlainText;

/** What goes into a design file: shown first, written on request. */
final class Lessons {

    private Lessons() {}

    /**
     * Shows what was learned and writes it where that is asked.
     *
     * @param content of the file as it was read
     * @param err where is said what was measured and stays as it is
     */
    static void tell(
            Path design, Learned.Lesson lesson, byte[] content, boolean write, PrintWriter out, PrintWriter err)
            throws IOException {
        for (Learned.Stays stays : lesson.stays()) {
            err.print(PlainText.of(stays.at().toString()) + ": " + PlainText.of(stays.path()) + " stays: " + stays.why()
                    + "\n");
        }
        out.print(PlainText.of(design.toString()) + "\n");
        String last = "";
        for (Learned.Value value : lesson.values()) {
            String shown = value.line() + value.after();
            if (shown.equals(last)) {
                continue;
            }
            last = shown;
            out.print("  line " + value.line() + (value.before().isEmpty() ? ", below it" : "") + ", by " + value.from()
                    + "\n");
            if (!value.before().isEmpty()) {
                out.print("  - " + PlainText.of(value.before()) + "\n");
            }
            out.print("  + " + PlainText.of(value.after()) + "\n");
        }
        int count = lesson.values().size();
        if (count == 0) {
            out.print(
                    lesson.stays().isEmpty()
                            ? "  Nothing to learn: the readings measure no value that the design states.\n"
                            : "  Nothing goes into the file.\n");
        } else if (write) {
            InPlace.write(design, content, lesson.text());
            out.print(count + (count == 1 ? " value written.\n" : " values written.\n"));
        } else {
            out.print("Nothing is written yet: --write writes " + (count == 1 ? "this value.\n" : "these values.\n"));
        }
    }
}
