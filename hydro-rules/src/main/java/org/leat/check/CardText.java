package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.TradeUnits;

/**
 * A text of a rule's card.
 *
 * @param kind of the outcome that says it; null for a way out
 * @param text with placeholders
 * @param placeholders of the text, in their order
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record CardText(@Nullable Kind kind, String text, List<Placeholder> placeholders) {

    public CardText {
        placeholders = List.copyOf(placeholders);
    }

    /**
     * {@return a text of a card}
     *
     * @throws IllegalArgumentException if a placeholder is misspelt
     */
    static CardText of(@Nullable Kind kind, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a text that says nothing");
        }
        return new CardText(kind, text, Placeholder.of(text));
    }

    /** {@return names of the arguments that the rule must give} */
    public List<String> arguments() {
        return placeholders.stream()
                .map(Placeholder::name)
                .filter(name -> !Placeholder.COMPARED.contains(name))
                .distinct()
                .toList();
    }

    /** {@return the first placeholder that nothing fills; null if all are filled} */
    @Nullable
    String unfilled(List<Arg> args, boolean compared) {
        for (Placeholder place : placeholders) {
            boolean given = args.stream().anyMatch(arg -> arg.name().equals(place.name()));
            if (!given && !(compared && Placeholder.COMPARED.contains(place.name()))) {
                return place.name();
            }
        }
        return null;
    }

    /**
     * A place in a text that an argument fills: {@code {flow}} in the usual unit and three significant digits,
     * {@code {flow:L/s}}, {@code {flow:L/s,2}}.
     *
     * @param name of the argument; {@code value}, {@code limit} and {@code margin} come from the comparison
     * @param unit to show it in; null for the usual one
     * @param digits significant ones; 0 for the usual number
     */
    public record Placeholder(String name, @Nullable String unit, int digits) {

        /** How a placeholder is written. */
        public static final Pattern PATTERN = Pattern.compile("\\{([a-zA-Z]+)(?::([^,{}]*))?(?:,([1-6]))?}");

        /** What a comparison fills by itself. */
        static final List<String> COMPARED = List.of("value", "limit", "margin");

        /**
         * {@return the placeholders of a text, in their order}
         *
         * @throws IllegalArgumentException for a brace that belongs to none, or a unit that nobody uses
         */
        static List<Placeholder> of(String text) {
            List<Placeholder> all = new ArrayList<>();
            int next = brace(text, 0);
            for (Matcher m = PATTERN.matcher(text); next < text.length(); next = brace(text, m.end())) {
                if (!m.find(next) || m.start() != next) {
                    throw new IllegalArgumentException("a brace that belongs to no placeholder: " + text);
                }
                all.add(of(m));
            }
            for (Placeholder one : all) {
                if (one.unit != null && !one.isKnown(one.unit)) {
                    throw new IllegalArgumentException("no unit is written " + one.unit + ": " + text);
                }
            }
            return List.copyOf(all);
        }

        /** Where the next brace stands, the text's length where none does. */
        private static int brace(String text, int from) {
            int at = from;
            while (at < text.length() && text.charAt(at) != '{' && text.charAt(at) != '}') {
                at++;
            }
            return at;
        }

        /** {@return what a match of {@link #PATTERN} says} */
        public static Placeholder of(Matcher m) {
            String digits = m.group(3);
            return new Placeholder(m.group(1), m.group(2), digits == null ? 0 : Integer.parseInt(digits));
        }

        private boolean isKnown(String spelling) {
            for (QuantityKind kind : QuantityKind.values()) {
                if (TradeUnits.find(kind, spelling) != null) {
                    return true;
                }
            }
            return false;
        }
    }
}
