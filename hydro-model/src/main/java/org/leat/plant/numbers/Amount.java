package org.leat.plant.numbers;

import org.leat.law.Answer;

/** A number of the plant, or the reason why there is none. Never a guess. */
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

    /**
     * No number.
     *
     * @param path field of the design that would settle it
     * @param reason message key, as {@code unknown/rating-above-temperature}
     */
    record Unknown(String path, String reason) implements Amount {}

    /** {@return a number} */
    static Amount of(double value) {
        return new Known(value);
    }

    /** {@return no number, because of a field of the design} */
    static Amount unknown(String path, String reason) {
        return new Unknown(path, reason);
    }

    /** {@return what a law answered} Outside its range the reason is given. */
    static Amount of(Answer answer, String path, String reason) {
        return answer instanceof Answer.Value v ? new Known(v.value()) : new Unknown(path, reason);
    }

    /** {@return the number, or the fallback where there is none} */
    default double or(double fallback) {
        return this instanceof Known k ? k.value() : fallback;
    }

    /** {@return the number times a factor, or the same reason} */
    default Amount times(double factor) {
        return this instanceof Known k ? new Known(k.value() * factor) : this;
    }
}
