package org.leat.expression;

import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelVariableResolver;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
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
     * @param budget what it may cost, with all else that spends of it
     * @throws MissingValueException where a value is not given or not known
     * @throws IllegalStateException where it cannot be computed, or not within its bounds
     */
    public Object over(Plant plant, @Nullable View each, Map<String, Magnitude> limits, Budget budget) {
        Notes notes = new Notes(budget);
        Map<String, Object> values = new LinkedHashMap<>();
        limits.forEach((name, limit) -> values.put("limit." + name, Kinds.value(limit.kind(), limit.si())));
        if (each != null) {
            values.put("each", View.noting(each, notes));
        }
        Map<String, Object> read = new LinkedHashMap<>();
        try {
            CelVariableResolver resolver = name -> {
                Vocabulary.Name known = names.get(name);
                if (known == null) {
                    return Optional.ofNullable(values.get(name));
                }
                Object before = read.get(name);
                if (before == null) {
                    before = View.noting(known.read().apply(plant), notes);
                    read.put(name, before);
                }
                return Optional.of(before);
            };
            Object value = program.trace(resolver, (part, of) -> notes.spend(1));
            if (value == null) {
                throw new IllegalStateException("the expression has no value");
            }
            return value;
        } catch (CelEvaluationException | RuntimeException e) {
            MissingValueException missing = missing(e, notes);
            if (missing != null) {
                throw missing;
            }
            throw new IllegalStateException(why(e), e);
        }
    }

    private static String why(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof Budget.SpentException) {
                return String.valueOf(cause.getMessage());
            }
        }
        return CompilerWords.evaluation(String.valueOf(e.getMessage()));
    }

    private static @Nullable MissingValueException missing(Throwable e, Notes notes) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof MissingValueException missing) {
                return missing;
            }
            // it asks whether there is such a key before it reads it
            Matcher absent = ABSENT.matcher(String.valueOf(cause.getMessage()));
            if (absent.find()) {
                return notes.missing(absent.group(1));
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
