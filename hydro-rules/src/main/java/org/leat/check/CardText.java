package org.leat.check;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

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
}
