package org.leat.rulefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Limit;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.expression.Budget;
import org.leat.expression.Expression;
import org.leat.expression.Magnitude;
import org.leat.expression.MissingValueException;
import org.leat.expression.View;

/**
 * A rule of a rule file.
 *
 * @param card what it says of itself
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
        RuleCard card,
        @Nullable Expression each,
        String at,
        @Nullable Expression when,
        @Nullable Expression value,
        @Nullable Expression atMost,
        @Nullable Expression atLeast,
        @Nullable String limits,
        @Nullable Expression must,
        Map<String, Expression> shown)
        implements LegacyRule {

    static final String PASSES = "passes";
    static final String FAILS = "fails";
    static final String NOTHING = "does-not-apply";

    @Override
    public List<Outcome> judge(Judgement j) {
        Map<String, Magnitude> inForce = new LinkedHashMap<>();
        for (String name : card.limits().keySet()) {
            Limit limit = j.limit(name);
            inForce.put(name, new Magnitude(limit.kind(), limit.value()));
        }
        Budget budget = new Budget();
        if (each == null) {
            return List.of(answer(j, j.at(at), null, inForce, budget));
        }
        List<Outcome> outcomes = new ArrayList<>();
        try {
            for (Object item : (List<?>) each.over(j.plant(), null, inForce, budget)) {
                View view = (View) item;
                Spot spot = j.at(view.path());
                outcomes.add(
                        answer(j, view.during().isEmpty() ? spot : spot.during(view.during()), view, inForce, budget));
            }
        } catch (MissingValueException e) {
            return List.of(missing(j.at(at), e));
        }
        return outcomes.isEmpty() ? List.of(j.at(at).notApplicable(NOTHING)) : outcomes;
    }

    private Outcome answer(Judgement j, Spot spot, @Nullable View view, Map<String, Magnitude> inForce, Budget budget) {
        try {
            if (when != null && !truth(when, j, view, inForce, budget)) {
                return spot.notApplicable(NOTHING);
            }
            Arg[] args = args(j, spot, view, inForce, budget);
            if (must != null) {
                return truth(must, j, view, inForce, budget) ? spot.pass(PASSES, args) : spot.fail(FAILS, args);
            }
            return spot.compare(comparison(j, view, inForce, budget), PASSES, FAILS, args);
        } catch (MissingValueException e) {
            return missing(spot, e);
        }
    }

    private static Outcome missing(Spot spot, MissingValueException e) {
        return e.unknown() == null ? spot.notGiven(e.path().isEmpty() ? "/" : e.path()) : spot.unknownOf(e.unknown());
    }

    private static boolean truth(
            Expression condition, Judgement j, @Nullable View view, Map<String, Magnitude> inForce, Budget budget) {
        return (Boolean) condition.over(j.plant(), view, inForce, budget);
    }

    private Comparison comparison(Judgement j, @Nullable View view, Map<String, Magnitude> inForce, Budget budget) {
        if (value == null) {
            throw new IllegalStateException("nothing to compare");
        }
        Object found = value.over(j.plant(), view, inForce, budget);
        double high = atMost == null
                ? Double.POSITIVE_INFINITY
                : Expression.si(atMost.over(j.plant(), view, inForce, budget));
        double low = atLeast == null
                ? Double.NEGATIVE_INFINITY
                : Expression.si(atLeast.over(j.plant(), view, inForce, budget));
        Comparison.Sense sense = atMost == null
                ? Comparison.Sense.AT_LEAST
                : atLeast == null ? Comparison.Sense.AT_MOST : Comparison.Sense.WITHIN;
        return new Comparison(sense, Expression.si(found), low, high, Expression.kind(found), limits);
    }

    private Arg[] args(Judgement j, Spot spot, @Nullable View view, Map<String, Magnitude> inForce, Budget budget) {
        List<Arg> args = new ArrayList<>();
        args.add(Arg.at("at", spot.path()));
        shown.forEach((name, expression) -> {
            Object found = expression.over(j.plant(), view, inForce, budget);
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
