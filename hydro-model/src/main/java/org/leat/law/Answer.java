package org.leat.law;

import java.util.OptionalDouble;
import org.apiguardian.api.API;

/**
 * The answer of a law that holds in a stated range only: a number, or the reason why there is none. A law never clamps
 * an input and never answers NaN in silence; what lies outside its range travels on as a reason and reaches the report
 * as an open question.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface Answer {

    /**
     * A number within the law's range.
     *
     * @param value in the SI unit that the law states
     */
    record Value(double value) implements Answer {
        public Value {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a law must answer a finite number, not " + value);
            }
        }
    }

    /**
     * An input outside the range in which the law is published.
     *
     * @param law what was asked, as its source names it
     * @param input the input that is outside, as the nomenclature names it
     * @param value the input's value, in {@code unit}
     * @param low the least value the law covers, in {@code unit}; empty where it has no lower end
     * @param high the greatest value the law covers, in {@code unit}; empty where it has no upper end
     * @param unit SI symbol of the three numbers, "1" for a ratio
     */
    record Outside(String law, String input, double value, OptionalDouble low, OptionalDouble high, String unit)
            implements Answer {}

    /** {@return an answer that is a number} */
    static Answer of(double value) {
        return new Value(value);
    }

    /** {@return an answer that says which input is outside the law's range} */
    static Outside outside(String law, String input, double value, double low, double high, String unit) {
        return new Outside(law, input, value, OptionalDouble.of(low), OptionalDouble.of(high), unit);
    }

    /** {@return an answer that says which input is below the least that the law holds for; it has no upper end} */
    static Outside below(String law, String input, double value, double low, String unit) {
        return new Outside(law, input, value, OptionalDouble.of(low), OptionalDouble.empty(), unit);
    }

    /** {@return an answer that says which input is above the greatest that the law holds for; it has no lower end} */
    static Outside above(String law, String input, double value, double high, String unit) {
        return new Outside(law, input, value, OptionalDouble.empty(), OptionalDouble.of(high), unit);
    }

    /** {@return the number} Throws {@link IllegalStateException} where there is none: ask with {@code instanceof} first. */
    default double orThrow() {
        if (this instanceof Value v) {
            return v.value();
        }
        throw new IllegalStateException("no number: " + this);
    }

    /** {@return whether this is a number} */
    default boolean isValue() {
        return this instanceof Value;
    }
}
