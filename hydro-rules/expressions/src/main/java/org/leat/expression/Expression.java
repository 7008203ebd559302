package org.leat.expression;

import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leat.plant.Plant;
import org.leat.quantity.QuantityKind;

/** A compiled expression. Safe to share between threads. */
public final class Expression {

    private static final Pattern ABSENT = Pattern.compile("key '([A-Za-z0-9]+)' is not present");

    private final CelRuntime.Program program;
    private final Expressions.Type type;
    private final Map<String, Vocabulary.Name> names;

    Expression(CelRuntime.Program program, Expressions.Type type, Map<String, Vocabulary.Name> names) {
        this.program = program;
        this.type = type;
        this.names = names;
    }

    /** {@return what it gives} */
    public Expressions.Type type() {
        return type;
    }

    /**
     * {@return its value over a plant: a {@link Magnitude}, a number, text, truth value, or list of {@link View}s}
     *
     * @param each what {@code each} stands for; null for nothing
     * @param limits in force, SI, by name
     * @throws MissingValueException where a value is not given or not known
     * @throws IllegalStateException where it cannot be computed, or not within its bounds
     */
    public Object over(Plant plant, @Nullable View each, Map<String, Magnitude> limits) {
        Map<String, MissingValueException> misses = new HashMap<>();
        Map<String, Object> values = new LinkedHashMap<>();
        limits.forEach((name, limit) -> values.put("limit." + name, Kinds.value(limit.kind(), limit.si())));
        if (each != null) {
            values.put("each", View.noting(each, misses));
        }
        Map<String, Object> read = new LinkedHashMap<>();
        try {
            Object value = program.eval((dev.cel.runtime.CelVariableResolver) name -> {
                Vocabulary.Name known = names.get(name);
                if (known == null) {
                    return java.util.Optional.ofNullable(values.get(name));
                }
                Object before = read.get(name);
                if (before == null) {
                    before = View.noting(known.read().apply(plant), misses);
                    read.put(name, before);
                }
                return java.util.Optional.of(before);
            });
            if (value == null) {
                throw new IllegalStateException("the expression has no value");
            }
            return value;
        } catch (CelEvaluationException | RuntimeException e) {
            MissingValueException missing = missing(e, misses);
            if (missing != null) {
                throw missing;
            }
            throw new IllegalStateException(CompilerWords.evaluation(String.valueOf(e.getMessage())), e);
        }
    }

    private static @Nullable MissingValueException missing(Throwable e, Map<String, MissingValueException> misses) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof MissingValueException missing) {
                return missing;
            }
            // it asks whether there is such a key before it reads it
            Matcher absent = ABSENT.matcher(String.valueOf(cause.getMessage()));
            if (absent.find()) {
                return misses.get(absent.group(1));
            }
        }
        return null;
    }

    /** {@return a value of an expression as a number in SI} */
    public static double si(Object value) {
        return value instanceof Magnitude m ? m.si() : ((Number) value).doubleValue();
    }

    /** {@return the kind of a value of an expression} */
    public static QuantityKind kind(Object value) {
        return value instanceof Magnitude m ? m.kind() : QuantityKind.RATIO;
    }
}
