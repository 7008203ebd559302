package org.leat.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.file.Problem;
import org.leat.file.ProblemText;

/** Writes for a person: worst first, then how the plant runs, what was assumed, what is open, and the counts. */
public final class TextWriter implements ReportWriter {

    private static final int TIGHTEST = 5;

    private final Appendable out;
    private final Colours colours;
    private final Rulebook rulebook;
    private final Wording wording;
    private final FindingText findings;
    private final Tally tally = new Tally();
    private boolean begun;

    /** Writes to {@code out} in the words of a rulebook. */
    public TextWriter(Rulebook rulebook, Appendable out, Colours colours) {
        this.out = out;
        this.colours = colours;
        this.rulebook = rulebook;
        this.wording = new Wording(rulebook);
        this.findings = new FindingText(wording, colours);
    }

    @Override
    public void add(Report report) throws IOException {
        begin();
        tally.add(report);
        String name = report.design().isEmpty() ? report.file() : report.file() + ": " + report.design();
        line(colours.heading(Plainly.of(name)));
        line("");
        if (!report.readable()) {
            for (Problem problem : report.problems()) {
                line(colours.level(Level.ERROR, "unreadable") + "  " + ProblemText.line(problem));
            }
            line("");
            return;
        }
        section("Does not count, and can hurt someone", findings.uncounted(report.endangeringUncounted()));
        List<Finding> failures = report.worstFirst(Kind.FAIL);
        if (failures.isEmpty()) {
            line("Nothing that was judged fails.");
            line("");
        }
        for (Finding finding : failures) {
            lines(findings.full(finding));
            line("");
        }
        section("Suppressions that suppress nothing", idle(report));
        section("For a person to look at", findings.brief(report.worstFirst(Kind.REVIEW)));
        section("How it runs", OperatingText.lines(report));
        section("What each case makes of the bus", BusText.lines(report));
        section("Pressure along the pipe", new ProfileText(wording).lines(report));
        section("Where every watt goes", WattsText.lines(report));
        section("Alternatives, side by side", OperatingText.alternatives(report));
        section("Assumed, because the file does not say", new AssumptionText(wording).lines(report.assumptions()));
        section("Could not be judged", findings.brief(report.worstFirst(Kind.OPEN)));
        section("Told", findings.brief(report.worstFirst(Kind.INFORMATIONAL)));
        if (report.day() != null) {
            line("Last days of suppressions were compared with " + report.day() + ".");
            line("");
        }
        section("Suppressed", findings.uncounted(harmless(report.suppressed())));
        section("Known from the baseline", findings.uncounted(harmless(report.known())));
        section("In the baseline and no more", SuppressionText.absent(report));
        section("Tightest of what holds", findings.tightest(report, TIGHTEST));
    }

    /** What settings hide of what can hurt comes before everything. */
    private void begin() throws IOException {
        if (!begun) {
            begun = true;
            section(
                    "Off, played down or loosened by settings, and can hurt someone",
                    SettingsText.playedDown(rulebook));
        }
    }

    private static List<String> idle(Report report) {
        return report.idle().stream()
                .map(idle -> Plainly.of(SuppressionText.of(idle, report.day())))
                .toList();
    }

    /** The others are at the top already. */
    private static List<Finding> harmless(List<Finding> findings) {
        return findings.stream().filter(f -> !f.endangers()).toList();
    }

    @Override
    public void broken(String file, String cause) throws IOException {
        begin();
        tally.addBroken();
        line(colours.heading(Plainly.of(file)));
        line("");
        line(colours.level(Level.ERROR, "not checked") + "  this program broke: " + Plainly.of(cause));
        line("");
    }

    @Override
    public void end() throws IOException {
        section("Changed by settings", SettingsText.changes(rulebook));
        for (String text : wording.phrase("caution").split("\n", -1)) {
            line(text);
        }
        line("");
        String loosened = SettingsText.inOneLine(rulebook);
        line(tally.line() + (loosened.isEmpty() ? "" : " " + loosened));
    }

    private void section(String title, List<String> lines) throws IOException {
        if (!lines.isEmpty()) {
            line(colours.heading(title));
            for (String text : lines) {
                line("  " + text);
            }
            line("");
        }
    }

    private void lines(List<String> lines) throws IOException {
        for (String text : lines) {
            line(text);
        }
    }

    private void line(String text) throws IOException {
        out.append(text).append('\n');
    }

    /** {@return watts with their sign} */
    static String watts(double gain) {
        long rounded = Math.round(gain);
        return rounded == 0
                ? "\u00b10 W"
                : String.format(Locale.ROOT, "%+d W", rounded).replace('-', '\u2212');
    }
}
