package org.leat.rulefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.expression.Budget;
import org.leat.expression.Expression;
import org.leat.expression.Magnitude;
import org.leat.expression.MissingValueException;
import org.leat.expression.View;
import org.leat.quantity.QuantityKind;

/**
 * How a rule of a rule file judges.
 *
 * @param each what it is judged for, one after the other; null for the plant as a whole
 * @param at where it is answered, without {@code each}
 * @param when it applies; null for always
 * @param value what is compared; null where {@code must} decides
 * @param atMost limit above; null for none
 * @param atLeast limit below; null for none
 * @param limits the names of its limits that the comparison is with; null where it is with something else
 * @param must hold; null where a value is compared
 * @param shown what else its texts show, by name
 */
record WrittenRule(
        @Nullable Expression each,
        String at,
        @Nullable Expression when,
        @Nullable Expression value,
        @Nullable Expression atMost,
        @Nullable Expression atLeast,
        @Nullable String limits,
        @Nullable Expression must,
        Map<String, Expression> shown) {

    static final String PASSES = "passes";
    static final String FAILS = "fails";
    static final String NOTHING = "does-not-apply";

    /** What the expressions of one judgement see and may spend. */
    private record Sight(Judgement judgement, Map<String, Magnitude> limits, Budget budget) {
        Object of(Expression expression, @Nullable View view) {
            return expression.over(judgement.plant(), view, limits, budget);
        }
    }

    List<Outcome> judge(Judgement j) {
        Map<String, Magnitude> inForce = new LinkedHashMap<>();
        j.limits().forEach((name, limit) -> inForce.put(name, new Magnitude(limit.kind(), limit.value())));
        Sight sight = new Sight(j, inForce, new Budget());
        if (each == null) {
            return List.of(answer(sight, j.at(at), null));
        }
        List<View> views = new ArrayList<>();
        try {
            for (Object item : (List<?>) sight.of(each, null)) {
                views.add((View) item);
            }
        } catch (MissingValueException e) {
            return List.of(missing(j.at(at), e));
        }
        return views.isEmpty()
                ? List.of(j.at(at).says(NOTHING))
                : j.each(views, view -> {
                    Spot spot = j.at(view.path());
                    return answer(sight, view.during().isEmpty() ? spot : spot.during(view.during()), view);
                });
    }

    private Outcome answer(Sight sight, Spot spot, @Nullable View view) {
        try {
            if (when != null && !(Boolean) sight.of(when, view)) {
                return spot.says(NOTHING);
            }
            Spot telling = spot.with(args(sight, spot, view));
            return must == null
                    ? telling.compare(comparison(sight, view))
                    : telling.holds((Boolean) sight.of(must, view));
        } catch (MissingValueException e) {
            return missing(spot, e);
        }
    }

    private static Outcome missing(Spot spot, MissingValueException e) {
        return e.unknown() == null ? spot.notGiven(e.path().isEmpty() ? "/" : e.path()) : spot.unknown(e.unknown());
    }

    private Comparison comparison(Sight sight, @Nullable View view) {
        Object found = sight.of(Objects.requireNonNull(value), view);
        double si = Expression.si(found);
        QuantityKind kind = Expression.kind(found);
        if (atMost == null) {
            return Comparison.atLeast(si, Expression.si(sight.of(Objects.requireNonNull(atLeast), view)), kind)
                    .setBy(limits);
        }
        double most = Expression.si(sight.of(atMost, view));
        return (atLeast == null
                        ? Comparison.atMost(si, most, kind)
                        : Comparison.within(si, Expression.si(sight.of(atLeast, view)), most, kind))
                .setBy(limits);
    }

    private Arg[] args(Sight sight, Spot spot, @Nullable View view) {
        List<Arg> args = new ArrayList<>();
        args.add(Arg.at("at", spot.path()));
        shown.forEach((name, expression) -> {
            Object found = sight.of(expression, view);
            if (found instanceof Long count) {
                args.add(Arg.of(name, count));
            } else if (found instanceof Magnitude || found instanceof Double) {
                args.add(Arg.of(name, Expression.si(found), Expression.kind(found)));
            } else {
                args.add(Arg.of(name, String.valueOf(found)));
            }
        });
        return args.toArray(Arg[]::new);
    }
}
