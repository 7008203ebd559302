package org.leat.hydraulics;

import java.util.OptionalDouble;
import org.leat.law.Physical;

/**
 * What readings say about a quantity.
 *
 * @param value in SI
 * @param plusMinus half-width within which it lies at 95 % confidence, in SI; empty where readings cannot tell (a single one)
 */
public record Estimate(double value, OptionalDouble plusMinus) {
    public Estimate {
        Physical.finite("value", value);
        plusMinus.ifPresent(half -> Physical.notNegative("plusMinus", half));
    }

    /** {@return a value with its half-width} */
    public static Estimate of(double value, double plusMinus) {
        return new Estimate(value, OptionalDouble.of(plusMinus));
    }

    /** {@return a value of which readings cannot tell how well they know it} */
    public static Estimate alone(double value) {
        return new Estimate(value, OptionalDouble.empty());
    }

    /** {@return the half-width over the value; empty where it is not known or the value is zero} */
    public OptionalDouble relative() {
        return plusMinus.isEmpty() || value == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(plusMinus.getAsDouble() / Math.abs(value));
    }

    /** {@return the same readings through {@code factor × reading}, with a further independent relative uncertainty} */
    Estimate times(double factor, double further) {
        OptionalDouble own = relative();
        double scaled = factor * value;
        return own.isEmpty()
                ? alone(scaled)
                : of(scaled, Math.abs(scaled) * Uncertainty.rootSumSquare(own.getAsDouble(), further));
    }
}
