package org.leat.plant.numbers;

import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.law.Answer;
import org.leat.quantity.Si;

/**
 * A number of the plant, or the reason why there is none: nobody stated it, or a law does not reach that far. Never a
 * guess.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface Amount {

    /**
     * A number.
     *
     * @param value in SI
     */
    record Known(double value) implements Amount {
        public Known {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("not a number: " + value);
            }
        }
    }

    /** No number, and why. */
    sealed interface Unknown extends Amount {

        /** {@return the field of the design that would settle it} */
        String path();

        /** {@return message key of the reason, as {@code unknown/rating-above-temperature}} */
        String reason();
    }

    /**
     * No number, because the design does not give it or gives what leaves it open.
     *
     * @param path field of the design that would settle it
     * @param reason message key, as {@code unknown/hose-rating}
     */
    record Missing(String path, String reason) implements Unknown {

        /** The design does not state the field; there is no more to say. */
        public static final String NOT_STATED = "unknown/not-stated";
    }

    /**
     * No number, because a law was asked outside the range in which it is published. See {@link Answer.Outside}.
     *
     * @param law what was asked, as its source names it
     * @param input the input that is outside, as the nomenclature names it
     * @param value the input's value, in {@code unit}
     * @param low the least value the law covers, in {@code unit}; empty where it has no lower end
     * @param high the greatest value the law covers, in {@code unit}; empty where it has no upper end
     * @param unit SI symbol of the three numbers, "1" for a ratio
     * @param path field of the design that the input comes from
     */
    record OutsideRange(
            String law, String input, double value, OptionalDouble low, OptionalDouble high, String unit, String path)
            implements Unknown {
        @Override
        public String reason() {
            return "unknown/outside-range";
        }
    }

    /** Numbers rising; behind them all what is not known, which may be greater than any. */
    Comparator<Amount> UNKNOWN_LAST =
            Comparator.comparing((Amount amount) -> !amount.isKnown()).thenComparingDouble(amount -> amount.or(0));

    /** {@return a number} */
    static Amount of(double value) {
        return new Known(value);
    }

    /** {@return no number, because of a field of the design} */
    static Amount missing(String path, String reason) {
        return new Missing(path, reason);
    }

    /** {@return no number, because the design does not state the field} */
    static Amount notStated(String path) {
        return new Missing(path, Missing.NOT_STATED);
    }

    /** {@return what the design states in a field, in SI; null where it does not} */
    static Amount stated(@Nullable Quantity<?> quantity, String path) {
        return quantity == null ? notStated(path) : new Known(Si.of(quantity));
    }

    /**
     * {@return what a law answered}
     *
     * @param path field of the design that the law's input comes from
     */
    static Amount of(Answer answer, String path) {
        if (answer instanceof Answer.Outside o) {
            return new OutsideRange(o.law(), o.input(), o.value(), o.low(), o.high(), o.unit(), path);
        }
        return new Known(((Answer.Value) answer).value());
    }

    /** {@return whether there is a number} */
    default boolean isKnown() {
        return this instanceof Known;
    }

    /** {@return the number, or the fallback where there is none} */
    default double or(double fallback) {
        return this instanceof Known k ? k.value() : fallback;
    }

    /** {@return a number made of the number, or the same reason} */
    default Amount map(DoubleUnaryOperator made) {
        return this instanceof Known k ? new Known(made.applyAsDouble(k.value())) : this;
    }

    /** {@return the number times a factor, or the same reason} */
    default Amount times(double factor) {
        return map(value -> value * factor);
    }
}
