package org.leat.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.QuantityKind;

/**
 * A value against its limit. Kept whether it holds or not, so that the tightest places of a sound design can be read.
 *
 * @param sense which side of the limit is right
 * @param value in the kind's SI unit; may be infinite
 * @param low the lower limit in SI; negative infinity for {@link Sense#AT_MOST}
 * @param high the upper limit in SI; infinity for {@link Sense#AT_LEAST}
 * @param kind what is compared
 * @param limits names of the rule's own limits that set {@code low} or {@code high}; null where the design sets it
 */
public record Comparison(
        Sense sense,
        double value,
        double low,
        double high,
        QuantityKind kind,
        @Nullable String limits) {

    /** Which side of the limit is right. */
    public enum Sense {
        /** value ≤ high. */
        AT_MOST,
        /** value ≥ low. */
        AT_LEAST,
        /** low ≤ value ≤ high. */
        WITHIN
    }

    public Comparison {
        if (Double.isNaN(value)
                || (sense != Sense.AT_MOST && !Double.isFinite(low))
                || (sense != Sense.AT_LEAST && !Double.isFinite(high))
                || (sense == Sense.WITHIN && low > high)) {
            throw new IllegalArgumentException(
                    "cannot compare " + value + " with " + sense + " " + low + " to " + high);
        }
    }

    /** {@return value ≤ limit, the limit coming from the design or a table} */
    public static Comparison atMost(double value, double limit, QuantityKind kind) {
        return new Comparison(Sense.AT_MOST, value, Double.NEGATIVE_INFINITY, limit, kind, null);
    }

    /** {@return value ≤ a limit of the rule} */
    public static Comparison atMost(double value, Limit limit) {
        return new Comparison(
                Sense.AT_MOST, value, Double.NEGATIVE_INFINITY, limit.value(), limit.kind(), limit.name());
    }

    /** {@return value ≥ limit, the limit coming from the design or a table} */
    public static Comparison atLeast(double value, double limit, QuantityKind kind) {
        return new Comparison(Sense.AT_LEAST, value, limit, Double.POSITIVE_INFINITY, kind, null);
    }

    /** {@return value ≥ a limit of the rule} */
    public static Comparison atLeast(double value, Limit limit) {
        return new Comparison(
                Sense.AT_LEAST, value, limit.value(), Double.POSITIVE_INFINITY, limit.kind(), limit.name());
    }

    /** {@return low ≤ value ≤ high, the limits coming from the design or a table} */
    public static Comparison within(double value, double low, double high, QuantityKind kind) {
        return new Comparison(Sense.WITHIN, value, low, high, kind, null);
    }

    /** {@return low ≤ value ≤ high, both limits of the rule} */
    public static Comparison within(double value, Limit low, Limit high) {
        return new Comparison(
                Sense.WITHIN, value, low.value(), high.value(), low.kind(), low.name() + ", " + high.name());
    }

    /** {@return whether a limit of the rule sets {@code low} or {@code high}} */
    public boolean isSetBy(String limit) {
        return limits != null && List.of(limits.split(", ", -1)).contains(limit);
    }

    /** {@return whether the value is on the right side} The limit itself is right. */
    public boolean holds() {
        return value >= low && value <= high;
    }

    /**
     * {@return how far the value is from its nearest limit, as a share of that limit; negative where it does not hold}
     *
     * <p>A temperature's share is taken from 0 °C. Against a limit of zero the margin is 1 on the right side, −1 on the
     * wrong one, 0 on it.
     */
    public double margin() {
        double below = sense == Sense.AT_LEAST ? Double.POSITIVE_INFINITY : share(high - value, high);
        double above = sense == Sense.AT_MOST ? Double.POSITIVE_INFINITY : share(value - low, low);
        return Math.min(below, above);
    }

    private double share(double distance, double limit) {
        double scale = Math.abs(kind == QuantityKind.TEMPERATURE ? limit - 273.15 : limit);
        return scale < 1e-12 ? Math.signum(distance) : distance / scale;
    }
}
