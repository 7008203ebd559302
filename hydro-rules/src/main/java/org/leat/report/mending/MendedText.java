package org.leat.report.mending;

import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rulebook;
import org.leat.check.WayOut;
import org.leat.file.ProblemText;
import org.leat.report.PlainText;
import org.leat.report.SettingsText;
import org.leat.report.TextWriter;
import org.leat.report.Wording;
import org.leat.report.Wrapping;

/** Shows a person what is changed in a design file and what remains. */
public final class MendedText {

    private final Appendable out;
    private final Rulebook rulebook;
    private final Wording wording;
    private final int width;

    /** Writes to {@code out} in the words of a rulebook. */
    public MendedText(Rulebook rulebook, Appendable out) {
        this(rulebook, out, Wrapping.WIDEST);
    }

    /**
     * Writes to {@code out} in the words of a rulebook.
     *
     * @param width of the screen, columns; taken as at least 40 and at most 100
     */
    public MendedText(Rulebook rulebook, Appendable out, int width) {
        this.out = out;
        this.rulebook = rulebook;
        this.width = width;
        this.wording = new Wording(rulebook);
    }

    /** Begins with what settings loosen of what protects people; with nothing where they loosen nothing. */
    public void begin() throws IOException {
        List<String> loosened = SettingsText.playedDown(rulebook);
        if (!loosened.isEmpty()) {
            line(SettingsText.LOOSENED);
            for (String one : loosened) {
                line("  " + one);
            }
            line("");
        }
    }

    /** Shows one file's changes. */
    public void add(String file, Mended mended) throws IOException {
        line(file);
        if (!mended.before().readable()) {
            for (var problem : mended.before().problems()) {
                line("  unreadable  " + ProblemText.line(problem));
            }
            line("");
            return;
        }
        if (mended.steps().isEmpty()) {
            line("  Nothing to change.");
        }
        for (Mended.Step step : mended.steps()) {
            Outcome outcome = step.finding().outcome();
            line("  line " + step.edit().position().line());
            line("  - " + step.lineBefore().strip());
            line("  + " + step.lineAfter().strip());
            line("    " + outcome.level().word() + " " + outcome.rule() + ": " + wording.of(outcome));
            OptionalDouble gain = step.way().gain();
            line("    way out: " + wording.of(step.way(), outcome)
                    + (gain.isEmpty() ? "" : " (" + TextWriter.watts(gain.getAsDouble()) + ")"));
        }
        if (!mended.left().isEmpty()) {
            line("  Left as it is:");
        }
        for (Mended.Left left : mended.left()) {
            Outcome outcome = left.finding().outcome();
            line("    " + outcome.level().word() + " " + outcome.rule() + " at "
                    + left.finding().position() + ": " + left.why().words());
            for (WayOut way : left.finding().waysOut()) {
                line("      advice: " + wording.of(way, outcome));
            }
        }
        line("  Before " + counts(mended.before()) + "; after " + counts(mended.after()) + ".");
        line("");
    }

    /** Says of the last file shown, or of the run, what became of it. */
    public void say(String sentence) throws IOException {
        line(sentence);
    }

    /** Adds, as the last line of all, what settings loosen of what protects people; nothing where they loosen nothing. */
    public void end() throws IOException {
        String loosened = SettingsText.inOneLine(rulebook);
        if (!loosened.isEmpty()) {
            line(loosened);
        }
    }

    /** Warns: a value in a file is not the plant. */
    public void caution() throws IOException {
        line("A value in a file is not the plant: what is changed here must be built so.");
        line(wording.phrase("caution").replace('\n', ' '));
    }

    private static String counts(org.leat.check.Report report) {
        return number(report.failures(Level.ERROR), "error") + ", " + number(report.failures(Level.WARNING), "warning")
                + ", " + number(report.failures(Level.NOTE), "note") + ", "
                + report.count(org.leat.check.Kind.OPEN) + " could not be judged";
    }

    private static String number(long number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }

    private void line(String text) throws IOException {
        out.append(Wrapping.text(PlainText.of(text), width)).append('\n');
    }
}
