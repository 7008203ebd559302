package org.leat.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.file.Problem;
import org.leat.file.ProblemText;

/**
 * Writes Markdown for a comment on a pull request: the counts, the designs that need attention and the findings, worst
 * first, each folded, those that repeat over designs as one. Never longer than a comment may be; what does not fit is counted.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class MarkdownWriter implements ReportWriter {

    /** Characters; services that show comments take 65 536. */
    static final int LONGEST = 60_000;

    private static final int ROWS = 20;
    private static final int KEPT = 200;

    private final Appendable out;
    private final Rulebook rulebook;
    private final Wording wording;
    private final MarkdownFinding texts;
    private final Tally tally = new Tally();
    private final WorstFirst<Finding> dangers = new WorstFirst<>(KEPT, Finding.WORST_FIRST);
    private final Repeats failures = new Repeats();
    private final Repeats questions = new Repeats();
    private final WorstFirst<String> meaningless = new WorstFirst<>(KEPT, Comparator.naturalOrder());
    private final WorstFirst<Row> rows = new WorstFirst<>(ROWS, Row.WORST_FIRST);
    private final WorstFirst<String> unreadable = new WorstFirst<>(KEPT, Comparator.naturalOrder());

    /** One design that needs attention. */
    private record Row(String file, String design, long errors, long warnings, long notes, long open, long uncounted) {

        static final Comparator<Row> WORST_FIRST = Comparator.comparingLong(Row::errors)
                .thenComparingLong(Row::warnings)
                .thenComparingLong(Row::notes)
                .thenComparingLong(Row::open)
                .reversed()
                .thenComparing(Row::file);

        boolean quiet() {
            return errors + warnings + notes + open + uncounted == 0;
        }
    }

    /** Writes to {@code out} in the words of a rulebook. */
    public MarkdownWriter(Rulebook rulebook, Appendable out) {
        this.out = out;
        this.rulebook = rulebook;
        this.wording = new Wording(rulebook);
        this.texts = new MarkdownFinding(wording);
    }

    @Override
    public void add(Report report) {
        tally.add(report);
        for (Problem problem : report.problems()) {
            unreadable.add(ProblemText.line(problem));
        }
        String judgedOn = ImplausibleNumbers.sentence(report, wording);
        if (!judgedOn.isEmpty()) {
            meaningless.add(report.file() + ": " + judgedOn);
        }
        report.endangeringUncounted().forEach(dangers::add);
        failures.add(report.worstFirst(Kind.FAIL));
        List<Finding> asked = new ArrayList<>(report.worstFirst(Kind.OPEN));
        asked.addAll(report.worstFirst(Kind.REVIEW));
        questions.add(asked);
        Row row = new Row(
                report.file(),
                report.design(),
                report.failures(Level.ERROR),
                report.failures(Level.WARNING),
                report.failures(Level.NOTE),
                report.count(Kind.OPEN),
                report.suppressed().size() + report.known().size());
        if (!row.quiet()) {
            rows.add(row);
        }
    }

    @Override
    public void broken(String file, String cause) {
        tally.addBroken();
        unreadable.add(file + ": not checked, this program broke: " + cause);
    }

    @Override
    public void end() throws IOException {
        BoundedText text = new BoundedText(LONGEST);
        String caution = "> " + wording.phrase("caution").replace("\n", "\n> ") + "\n";
        text.reserve(caution.length());
        text.always("## Design check\n\n" + MarkdownText.of(tally.line()) + "\n");
        List<String> loosened = SettingsText.playedDown(rulebook);
        if (!loosened.isEmpty()) {
            text.ifFits("\n### " + SettingsText.LOOSENED + "\n\n");
            loosened.forEach(line -> text.ifFits("- " + MarkdownText.of(line) + "\n"));
        }
        section(text, "Cannot be meant", meaningless, line -> "- " + MarkdownText.of(line) + "\n");
        section(text, "Can hurt someone and does not count", dangers, texts::folded);
        section(text, "Not checked", unreadable, line -> "- " + MarkdownText.of(line) + "\n");
        table(text);
        section(text, "Worst first", failures.worstFirst(KEPT), texts::folded);
        if (questions.seen() > 0) {
            String title = "\n<details><summary>Could not be judged or is for a person to look at: " + questions.seen()
                    + "</summary>\n\n";
            String close = "\n</details>\n";
            if (text.fits(title.length() + close.length() + 100)) {
                text.reserve(close.length());
                text.always(title);
                list(text, questions.worstFirst(KEPT), texts::line);
                text.always(close);
            }
        }
        text.always("\n" + caution);
        out.append(text.toString());
    }

    private static <T> void section(
            BoundedText text, String title, WorstFirst<T> items, java.util.function.Function<T, String> shown) {
        if (!items.isEmpty()) {
            text.ifFits("\n### " + title + "\n\n");
            list(text, items, shown);
        }
    }

    private static <T> void list(BoundedText text, WorstFirst<T> items, java.util.function.Function<T, String> shown) {
        int told = 0;
        for (T item : items.worstFirst()) {
            if (!text.ifFits(shown.apply(item))) {
                break;
            }
            told++;
        }
        if (items.seen() > told) {
            text.always("\n" + (items.seen() - told) + " more, not shown here.\n");
        }
    }

    private void table(BoundedText text) {
        if (rows.isEmpty()) {
            return;
        }
        List<String> lines = new ArrayList<>();
        lines.add("\n| design | errors | warnings | notes | open | not counted |");
        lines.add("|---|---:|---:|---:|---:|---:|");
        for (Row row : rows.worstFirst()) {
            String name = row.design().isEmpty() ? row.file() : row.file() + ": " + row.design();
            lines.add("| " + MarkdownText.of(shortened(name)) + " | " + row.errors() + " | " + row.warnings() + " | "
                    + row.notes() + " | " + row.open() + " | " + row.uncounted() + " |");
        }
        lines.forEach(line -> text.ifFits(line + "\n"));
        if (rows.seen() > ROWS) {
            text.always("\n" + (rows.seen() - ROWS) + " more designs need attention.\n");
        }
    }

    private static String shortened(String name) {
        int most = 200;
        return name.codePointCount(0, name.length()) <= most
                ? name
                : name.substring(0, name.offsetByCodePoints(0, most)) + "\u2026";
    }
}
