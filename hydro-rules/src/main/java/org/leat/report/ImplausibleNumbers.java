package org.leat.report;

import java.util.List;
import java.util.stream.Collectors;
import org.leat.check.Finding;
import org.leat.check.Report;

/** What a report says of numbers that cannot be meant: whatever else it says is judged on them. */
final class ImplausibleNumbers {

    private ImplausibleNumbers() {}

    /** {@return a phrase for each such number: {@code runner.pitch-diameter of 140 m}} */
    static List<String> phrases(Report report, Wording wording) {
        return report.judgedOn().stream()
                .map(finding -> phrase(finding, wording))
                .distinct()
                .toList();
    }

    private static String phrase(Finding finding, Wording wording) {
        String value = wording.value(finding.outcome());
        String place = Wording.place(finding.outcome().path());
        return PlainText.of(value.isEmpty() ? place : place + " of " + value);
    }

    /** {@return one sentence; "" where every number can be meant} */
    static String sentence(Report report, Wording wording) {
        List<String> phrases = phrases(report, wording);
        return phrases.isEmpty()
                ? ""
                : phrases.stream()
                        .collect(
                                Collectors.joining(", ", "All that follows is judged on ", ", which cannot be meant."));
    }
}
