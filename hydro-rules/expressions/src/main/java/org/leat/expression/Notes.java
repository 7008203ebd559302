package org.leat.expression;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is noted while an expression is evaluated: what was asked for and is not given, and what it costs. */
final class Notes {

    private final Map<String, MissingValueException> misses = new HashMap<>();
    private final Budget budget;

    Notes(Budget budget) {
        this.budget = budget;
    }

    void missing(String field, MissingValueException e) {
        misses.put(field, e);
    }

    @Nullable
    MissingValueException missing(String field) {
        return misses.get(field);
    }

    void spend(long steps) {
        budget.spend(steps);
    }
}
