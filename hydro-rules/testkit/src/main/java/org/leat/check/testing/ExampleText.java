package org.leat.check.testing;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.leat.check.Finding;
import org.leat.check.NamedLimit;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Rulebook;
import org.leat.check.WayOut;
import org.leat.report.Wording;

/** What must hold of the words of a finding. */
final class ExampleText {

    private static final Pattern UNFILLED = Pattern.compile("\\{[a-zA-Z]+[^{}]*}");

    private ExampleText() {}

    static String sentence(Rulebook rulebook, Finding finding) {
        return new Wording(rulebook).of(finding);
    }

    /** Every message said has a text, and every placeholder of it is filled. */
    static void isWhole(Rulebook rulebook, Finding finding) {
        Outcome outcome = finding.outcome();
        Wording wording = new Wording(rulebook);
        whole(rulebook, outcome.rule(), outcome.message().id(), wording.of(outcome));
        for (WayOut way : finding.waysOut()) {
            whole(rulebook, outcome.rule(), way.message().id(), wording.of(way, outcome));
        }
    }

    /** {@return whether a placeholder was left in a sentence} */
    static boolean isUnfilled(String sentence) {
        return UNFILLED.matcher(sentence).find();
    }

    private static void whole(Rulebook rulebook, String rule, String messageId, String sentence) {
        Map<String, String> texts = rulebook.texts();
        if (!texts.containsKey(rule + "." + messageId) && !texts.containsKey(messageId)) {
            throw new AssertionError(rule + "." + messageId + " has no text");
        }
        if (isUnfilled(sentence)) {
            throw new AssertionError(rule + "." + messageId + " is not filled: " + sentence);
        }
    }

    /** A failure names its value and limit where it compares, and its rule and limit name their sources. */
    static void namesValueLimitAndSource(Rulebook rulebook, Finding finding) {
        Outcome outcome = finding.outcome();
        String key = outcome.rule() + "." + outcome.message().id();
        String text = rulebook.texts().getOrDefault(key, "");
        if (outcome.comparison() != null) {
            for (String word : List.of("value", "limit")) {
                if (!Pattern.compile("\\{" + word + "[:,}]").matcher(text).find()) {
                    throw new AssertionError(key + " does not name its " + word + ": " + text);
                }
            }
        }
        RuleCard card = rulebook.rule(outcome.rule()).card();
        for (NamedLimit limit : card.limits().values()) {
            if (limit.source().isBlank()) {
                throw new AssertionError(card.id() + " has no source for its limit " + limit.name());
            }
        }
        if (card.sources().stream().anyMatch(String::isBlank)) {
            throw new AssertionError(card.id() + " has an empty source");
        }
    }
}
