package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;

/** One judgement as a test case. */
record JUnitCase(String name, Result result, String type, String message, List<String> lines) {

    /** What came of a case. */
    enum Result {
        PASSED,
        SKIPPED,
        FAILURE,
        ERROR;

        String element() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    static JUnitCase error(String name, String message, String line) {
        return new JUnitCase(name, Result.ERROR, "error", message, List.of(line));
    }

    /** {@return what settings loosen of what protects people: never a case that passed} */
    static JUnitCase loosened(String line) {
        return new JUnitCase(line, Result.SKIPPED, "settings", "can hurt someone: " + line, List.of());
    }

    /** {@return that all cases of a design are judged on a number that cannot be meant: never a case that passed} */
    static JUnitCase judgedOn(String phrase) {
        String said = "all cases of this design are judged on " + phrase + ", which cannot be meant";
        return new JUnitCase("judged on " + phrase, Result.SKIPPED, "input", said, List.of());
    }

    static JUnitCase of(Finding finding, Wording wording, Level failOn) {
        Outcome outcome = finding.outcome();
        String name = outcome.rule() + " " + Wording.place(outcome.path())
                + (outcome.during().isEmpty() ? "" : " (" + outcome.during() + ")");
        String said = wording.of(finding);
        List<String> lines = lines(finding, wording);
        if (finding.broke()) {
            return new JUnitCase(name, Result.ERROR, "broke", "the rule broke: " + said, lines);
        }
        String level = outcome.level().word();
        if (finding.failsAt(failOn)) {
            return new JUnitCase(name, Result.FAILURE, level, said, lines);
        }
        if (outcome.kind() == Kind.PASS) {
            return new JUnitCase(name, Result.PASSED, "", "", lines);
        }
        String standing = SetAside.of(finding);
        String kind = outcome.kind() == Kind.FAIL ? level : outcome.kind().word();
        return new JUnitCase(
                name, Result.SKIPPED, kind, kind + ": " + said + (standing == null ? "" : " " + standing), lines);
    }

    private static List<String> lines(Finding finding, Wording wording) {
        Outcome outcome = finding.outcome();
        List<String> lines = new ArrayList<>();
        if (outcome.kind() != Kind.PASS) {
            lines.add("at " + finding.position());
        }
        ComparisonText compared = wording.comparison(outcome);
        if (compared != null) {
            lines.add("value " + compared.value() + ", limit " + compared.limit() + ", " + compared.margin());
        }
        if (outcome.kind() == Kind.FAIL) {
            lines.add("source " + FindingText.source(wording.rule(outcome.rule()), outcome.comparison()));
        }
        finding.waysOut().forEach(way -> lines.add("way out: " + wording.of(way, outcome)));
        return lines;
    }
}
