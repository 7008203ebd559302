package org.leat.sure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.check.Comparison;
import org.leat.check.Identity;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;

/** What rules answered about one plant, found again by what they answered about another. */
final class Answers {

    private final Map<Identity, Outcome> exact = new HashMap<>();
    private final Map<Identity, List<Outcome>> byPlace = new HashMap<>();
    private boolean error;

    private Answers() {}

    static Answers of(List<Outcome> outcomes) {
        Answers answers = new Answers();
        for (Outcome outcome : outcomes) {
            answers.exact.merge(outcome.identity(), outcome, Answers::worse);
            answers.byPlace
                    .computeIfAbsent(place(outcome.identity()), p -> new ArrayList<>())
                    .add(outcome);
            answers.error |= outcome.kind() == Kind.FAIL && outcome.level() == Level.ERROR;
        }
        return answers;
    }

    private static Identity place(Identity identity) {
        return new Identity(identity.rule(), identity.path(), "");
    }

    private static Outcome worse(Outcome one, Outcome other) {
        int kind = one.kind().compareTo(other.kind());
        return kind < 0 || (kind == 0 && margin(one) <= margin(other)) ? one : other;
    }

    private static double margin(Outcome outcome) {
        Comparison comparison = outcome.comparison();
        return comparison == null ? Double.POSITIVE_INFINITY : comparison.margin();
    }

    /** {@return whether anything fails as an error} */
    boolean anyError() {
        return error;
    }

    /** {@return how many answers there are at the same element} */
    int atPlace(Identity identity) {
        return byPlace.getOrDefault(place(identity), List.of()).size();
    }

    /**
     * {@return the answer to the same question; null where it is not asked any more}
     *
     * @param alone whether it was the rule's only answer at its element: then it is the worst there, whatever the case
     */
    @Nullable
    Outcome like(Identity identity, boolean alone) {
        Outcome same = exact.get(identity);
        if (same != null || !alone) {
            return same;
        }
        return byPlace.getOrDefault(place(identity), List.of()).stream()
                .reduce(Answers::worse)
                .orElse(null);
    }
}
