package org.leat.report;

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
        Outcome outcome = finding.outcome();
        StringBuilder text = new StringBuilder("<details><summary>");
        String level = outcome.kind() == Kind.FAIL
                ? outcome.level().word()
                : outcome.kind().word();
        text.append("<b>").append(level).append("</b> ").append(outcome.rule()).append(" at ");
        text.append(MarkdownText.of(finding.position().toString())).append(": ");
        text.append(MarkdownText.of(wording.of(finding))).append("</summary>\n\n");
        String standing = Standing.of(finding);
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
        return text.append("\n</details>\n\n").toString();
    }

    /** {@return it all in one line of a list} */
    String line(Finding finding) {
        Outcome outcome = finding.outcome();
        StringBuilder text = new StringBuilder();
        item(text, outcome.rule() + " at " + finding.position() + ": " + wording.of(finding));
        return text.toString();
    }

    private static void item(StringBuilder text, String said) {
        text.append("- ").append(MarkdownText.of(said)).append('\n');
    }
}
