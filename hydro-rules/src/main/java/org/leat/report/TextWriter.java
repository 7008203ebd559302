package org.leat.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.choice.Overview;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.file.Reading;
import org.leat.sure.Sureness;

/**
 * Writes for a person. Given an overview, one screen for each design: whether it is safe to open, what it gives, what to do
 * first and what to tell next; all the rest only where it is asked for. Without an overview, all the rest. No line is wider
 * than it is told.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class TextWriter implements ReportWriter {

    /** Lines of what is said of one design first, with the caution and the counts that close the output. */
    private static final int SCREEN = 40;

    private static final int TIGHTEST = 5;
    private static final int INDENT = 2;
    private static final int MOST_OF_SETTINGS = 3;
    private static final int MOST_OF_DOUBTS = 3;

    private final Appendable out;
    private final Colours colours;
    private final Rulebook rulebook;
    private final Wording wording;
    private final FindingText findings;
    private final Tally tally = new Tally();
    private final int width;
    private final boolean whole;
    private boolean begun;

    /** Writes all there is to {@code out} in the words of a rulebook, 100 columns wide. */
    public TextWriter(Rulebook rulebook, Appendable out, Colours colours) {
        this(rulebook, out, colours, Columns.MOST, true);
    }

    /**
     * Writes to {@code out} in the words of a rulebook.
     *
     * @param width of the screen, columns; taken as at least 40 and at most 100
     * @param whole whether to write all there is behind the overview
     */
    public TextWriter(Rulebook rulebook, Appendable out, Colours colours, int width, boolean whole) {
        this.out = out;
        this.colours = colours;
        this.rulebook = rulebook;
        this.wording = new Wording(rulebook);
        this.findings = new FindingText(wording, colours);
        this.width = Wrapping.within(width);
        this.whole = whole;
    }

    @Override
    public void add(Report report) throws IOException {
        begin();
        tally.add(report);
        line(colours.heading(name(report)));
        line("");
        lines(judgedOn(report));
        if (report.readable()) {
            rest(report, findings.grouped(report.worstFirst(Kind.FAIL)));
        } else {
            problems(report);
        }
    }

    @Override
    public void add(Report report, Reading reading, Overview overview) throws IOException {
        add(report, overview, SureText.NONE);
    }

    @Override
    public void add(Report report, Reading reading, Overview overview, Sureness sureness) throws IOException {
        add(report, overview, new SureText(report, sureness, rulebook));
    }

    private void add(Report report, Overview overview, SureText sure) throws IOException {
        if (!report.readable()) {
            add(report);
            return;
        }
        begin();
        tally.add(report);
        lines(judgedOn(report));
        int around = playedDown().size()
                + changed().size()
                + judgedOn(report).size()
                + closing().size();
        List<String> nearest = titled("Nearest to their limits, and what matters most", sure.lines(whole));
        int most = SCREEN - around - (whole ? 0 : 2 + nearest.size());
        lines(new OverviewText(wording, colours, width).lines(name(report), overview, sure.head(), most));
        lines(nearest);
        if (whole) {
            rest(report, failures(overview));
        } else {
            line("All findings, tables and questions: leat check --whole");
            line("");
        }
    }

    private List<String> judgedOn(Report report) {
        String sentence = ImplausibleNumbers.sentence(report, wording);
        if (sentence.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        for (String part : Columns.wrapped(sentence, width, 0, MOST_OF_DOUBTS)) {
            lines.add(colours.level(Level.ERROR, part));
        }
        lines.add("");
        return lines;
    }

    private static List<GroupedFailure> failures(Overview overview) {
        return overview.causes().stream()
                .flatMap(c -> Stream.concat(c.clears().stream(), c.calms().stream()))
                .sorted(Comparator.comparing(GroupedFailure::worst, Finding.WORST_FIRST))
                .toList();
    }

    private static String name(Report report) {
        return PlainText.of(report.design().isEmpty() ? report.file() : report.file() + ": " + report.design());
    }

    private void problems(Report report) throws IOException {
        for (Problem problem : report.problems()) {
            line(colours.level(Level.ERROR, "unreadable") + "  " + ProblemText.line(problem));
        }
        line("");
    }

    private void rest(Report report, List<GroupedFailure> failures) throws IOException {
        if (failures.isEmpty()) {
            line("Nothing that was judged fails.");
            line("");
        }
        for (GroupedFailure failure : failures) {
            lines(findings.full(failure));
            line("");
        }
        section("Does not count, and can hurt someone", findings.uncounted(report.endangeringUncounted()));
        section("Suppressions that suppress nothing", idle(report));
        section("For a person to look at", findings.brief(report.worstFirst(Kind.REVIEW)));
        List<String> on = ImplausibleNumbers.phrases(report, wording);
        String doubt = on.isEmpty() ? "" : ", judged on " + String.join(", ", on);
        section("How it runs" + doubt, OperatingText.lines(report, width - INDENT));
        section("What each case makes of the bus" + doubt, BusText.lines(report, width - INDENT));
        section("Pressure along the pipe" + doubt, new ProfileText(wording).lines(report, width - INDENT));
        section("Where every watt goes" + doubt, WattsText.lines(report, width - INDENT));
        section("Alternatives, side by side", OperatingText.alternatives(report, width - INDENT));
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
        section("Tightest of what holds" + doubt, findings.tightest(report, TIGHTEST));
    }

    /** What settings hide of what can hurt comes before everything. */
    private void begin() throws IOException {
        if (!begun) {
            begun = true;
            lines(playedDown());
        }
    }

    private List<String> playedDown() {
        return titled(SettingsText.LOOSENED, bounded(SettingsText.playedDown(rulebook), "rules"));
    }

    private List<String> changed() {
        return titled("Changed by settings", bounded(SettingsText.changes(rulebook), "changes"));
    }

    /** {@return the first few, unless all there is was asked for} */
    private List<String> bounded(List<String> lines, String what) {
        if (whole || lines.size() <= MOST_OF_SETTINGS) {
            return lines;
        }
        List<String> few = new ArrayList<>(lines.subList(0, MOST_OF_SETTINGS));
        few.add((lines.size() - MOST_OF_SETTINGS) + " more " + what + ": --whole");
        return few;
    }

    private static List<String> idle(Report report) {
        return report.idle().stream()
                .map(idle -> PlainText.of(SuppressionText.of(idle, report.day())))
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
        line(colours.heading(PlainText.of(file)));
        line("");
        line(colours.level(Level.ERROR, "not checked") + "  this program broke: " + PlainText.of(cause));
        line("");
    }

    @Override
    public void end() throws IOException {
        lines(changed());
        lines(closing());
    }

    private List<String> closing() {
        List<String> lines = new ArrayList<>();
        lines.addAll(Columns.wrapped(wording.phrase("caution").replace('\n', ' '), width, 0));
        lines.add("");
        lines.addAll(Columns.wrapped(tally.line(), width, 0));
        String loosened = SettingsText.inOneLine(rulebook);
        if (!loosened.isEmpty()) {
            lines.addAll(Columns.wrapped(loosened, width, 0));
        }
        return lines;
    }

    private void section(String title, List<String> lines) throws IOException {
        lines(titled(title, lines));
    }

    /** {@return a title with its lines, broken to the screen, and an empty one; nothing where there are none} */
    private List<String> titled(String title, List<String> lines) {
        if (lines.isEmpty()) {
            return List.of();
        }
        List<String> all = new ArrayList<>(Columns.wrapped(colours.heading(title), width));
        for (String text : lines) {
            all.addAll(Columns.wrapped(" ".repeat(INDENT) + text, width));
        }
        all.add("");
        return all;
    }

    private void lines(List<String> lines) throws IOException {
        for (String text : lines) {
            line(text);
        }
    }

    private void line(String text) throws IOException {
        for (String part : Columns.wrapped(text, width)) {
            out.append(part).append('\n');
        }
    }

    /** {@return watts with their sign} */
    public static String watts(double gain) {
        long rounded = Math.round(gain);
        return rounded == 0
                ? "\u00b10 W"
                : String.format(Locale.ROOT, "%+d W", rounded).replace('-', '\u2212');
    }

    /** Colours of a terminal, or none. */
    public enum Colours {
        /** plain text. */
        NONE,
        /** escape sequences of ECMA-48. */
        TERMINAL;

        String level(Level level, String text) {
            return paint(
                    switch (level) {
                        case ERROR -> "1;31";
                        case WARNING -> "33";
                        case NOTE -> "36";
                    },
                    text);
        }

        String heading(String text) {
            return paint("1", text);
        }

        private String paint(String code, String text) {
            return this == NONE ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
        }
    }
}
