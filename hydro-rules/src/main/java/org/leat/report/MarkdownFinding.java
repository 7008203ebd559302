package org.leat.report;

import java.util.List;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.WayOut;

/** One finding in Markdown. */
final class MarkdownFinding {

    private final Wording wording;

    MarkdownFinding(Wording wording) {
        this.wording = wording;
    }

    /** {@return what is wrong in one line, the rest folded under it} */
    String folded(Finding finding) {
        return folded(new Repeats.Repeat(finding, 1, 1, List.of()));
    }

    /** {@return the worst of several in one line with how many there are, the rest folded under it} */
    String folded(Repeats.Repeat repeat) {
        Finding finding = repeat.worst();
        Outcome outcome = finding.outcome();
        StringBuilder text = new StringBuilder("<details><summary>");
        String level = outcome.kind() == Kind.FAIL
                ? outcome.level().word()
                : outcome.kind().word();
        text.append("<b>").append(level).append("</b> ").append(outcome.rule()).append(" at ");
        text.append(MarkdownText.of(finding.position().toString())).append(": ");
        text.append(MarkdownText.of(wording.of(finding) + more(repeat))).append("</summary>\n\n");
        String standing = SetAside.of(finding);
        if (standing != null) {
            item(text, standing);
        }
        item(
                text,
                "at " + Wording.place(outcome.path())
                        + (outcome.during().isEmpty() ? "" : ", case " + outcome.during()));
        ComparisonText compared = wording.comparison(outcome);
        if (compared != null) {
            item(text, "value " + compared.value() + ", limit " + compared.limit() + ", " + compared.margin());
        }
        item(text, "source " + FindingText.source(wording.rule(outcome.rule()), outcome.comparison()));
        for (WayOut way : finding.waysOut()) {
            item(
                    text,
                    "way out: " + wording.of(way, outcome)
                            + (way.gain().isEmpty()
                                    ? ""
                                    : " (" + TextWriter.watts(way.gain().getAsDouble()) + ")"));
        }
        for (String place : repeat.also()) {
            item(text, "also at " + place);
        }
        int untold = repeat.count() - 1 - repeat.also().size();
        if (untold > 0) {
            item(text, "and at " + untold + " more places");
        }
        return text.append("\n</details>\n\n").toString();
    }

    /** {@return it all in one line of a list} */
    String line(Repeats.Repeat repeat) {
        Finding finding = repeat.worst();
        Outcome outcome = finding.outcome();
        StringBuilder text = new StringBuilder();
        item(text, outcome.rule() + " at " + finding.position() + ": " + wording.of(finding) + more(repeat));
        return text.toString();
    }

    private static String more(Repeats.Repeat repeat) {
        return repeat.count() == 1 ? "" : " (worst of " + repeat.count() + ", in " + repeat.designs() + " designs)";
    }

    private static void item(StringBuilder text, String said) {
        text.append("- ").append(MarkdownText.of(said)).append('\n');
    }
}
