package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leat.check.Limit;
import org.leat.check.RuleCard;
import org.leat.check.RuleInForce;

/** A rule's page, in Markdown: what {@code explain} prints and the reference holds. */
public final class RulePage {

    private RulePage() {}

    /** {@return the page, ending in a line feed} */
    public static String of(RuleInForce rule) {
        RuleCard card = rule.card();
        List<String> lines = new ArrayList<>();
        lines.add("# " + card.id());
        lines.add("");
        lines.add(sentence(card.title()) + ". A failure is "
                + article(rule.level().word()) + " unless a case below says other.");
        lines.add("");
        lines.add("**Why.** " + card.why());
        lines.add("");
        lines.add("**Computed.** " + card.formula());
        lines.add("");
        lines.add("**Case.** " + card.judged());
        lines.add("");
        lines.add("**Source.** " + String.join("; ", card.sources()));
        if (!rule.limits().isEmpty()) {
            lines.add("");
            lines.add("| limit | value | source |");
            lines.add("|---|---|---|");
            rule.limits().values().forEach(limit -> lines.add(row(limit)));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String row(Limit limit) {
        String value =
                UsualUnits.show(limit.value(), limit.kind(), limit.named().unit(), 6);
        String changed = limit.changedBy() == null
                ? ""
                : " (changed by " + limit.changedBy() + "; the rule's own is "
                        + UsualUnits.show(
                                limit.named().standard(),
                                limit.kind(),
                                limit.named().unit(),
                                6)
                        + ")";
        return "| " + limit.name() + " | " + value + changed + " | "
                + limit.named().source() + " |";
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String article(String word) {
        return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }
}
