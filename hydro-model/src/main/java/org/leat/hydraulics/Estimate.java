package org.leat.hydraulics;

import org.jspecify.annotations.Nullable;
import org.leat.law.Physical;

/**
 * What readings say about a quantity.
 *
 * @param value in SI
 * @param plusMinus half-width within which it lies at 95 % confidence, in SI; null where readings cannot tell (a single one)
 */
public record Estimate(double value, @Nullable Double plusMinus) {
    public Estimate {
        Physical.finite("value", value);
        if (plusMinus != null) {
            Physical.notNegative("plusMinus", plusMinus);
        }
    }

    /** {@return the half-width over the value; null where it is not known or the value is zero} */
    public @Nullable Double relative() {
        Double half = plusMinus;
        return half == null || value == 0 ? null : Double.valueOf(half / Math.abs(value));
    }

    /** {@return the same readings through {@code factor × reading}, with a further independent relative uncertainty} */
    Estimate times(double factor, double further) {
        Double own = relative();
        double scaled = factor * value;
        return new Estimate(
                scaled,
                own == null ? null : Double.valueOf(Math.abs(scaled) * Uncertainty.rootSumSquare(own, further)));
    }
}
