package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Limit;
import org.leat.check.RuleCard;
import org.leat.check.RuleInForce;

/** A rule's page, in Markdown: what {@code explain} prints and the reference holds. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class RulePage {

    private RulePage() {}

    /**
     * {@return the page, ending in a line feed}
     *
     * @param example what {@link org.leat.check.RulePack#examples()} has for the rule; null for none
     */
    public static String of(RuleInForce rule, @Nullable String example) {
        RuleCard card = rule.card();
        List<String> lines = new ArrayList<>();
        lines.add("# " + card.id());
        lines.add("");
        lines.add(sentence(PlainText.of(card.title())) + ". A failure is "
                + article(rule.level().word())
                + (rule.level().compareTo(card.worst()) < 0
                        ? ", at worst " + article(card.worst().word())
                        : "") + ".");
        lines.add("");
        lines.add("**Why.** " + PlainText.of(card.why()));
        lines.add("");
        lines.add("**Computed.** " + PlainText.of(card.formula()));
        lines.add("");
        lines.add("**Case.** " + PlainText.of(card.judged()));
        lines.add("");
        lines.add("**Source.** " + PlainText.of(String.join("; ", card.sources())));
        if (!rule.limits().isEmpty()) {
            lines.add("");
            lines.add("| limit | value | source |");
            lines.add("|---|---|---|");
            rule.limits().values().forEach(limit -> lines.add(row(limit)));
        }
        if (example != null) {
            lines.add("");
            lines.add("## A design that fails");
            lines.add("");
            example.strip().lines().map(PlainText::of).forEach(lines::add);
        }
        lines.add("");
        lines.add("## In a settings file");
        lines.add("");
        lines.addAll(RuleInSettings.lines(rule));
        return String.join("\n", lines) + "\n";
    }

    private static String row(Limit limit) {
        String value =
                UsualUnits.show(limit.value(), limit.kind(), limit.named().unit(), 6);
        String changed = limit.changedBy() == null
                ? ""
                : " (changed by " + PlainText.of(limit.changedBy()) + "; the rule's own is "
                        + UsualUnits.show(
                                limit.named().standard(),
                                limit.kind(),
                                limit.named().unit(),
                                6)
                        + ")";
        return "| " + limit.name() + " | " + value + changed + " | "
                + PlainText.of(limit.named().source()) + " |";
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String article(String word) {
        return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }
}
