package org.leat.check;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.QuantityKind;

/**
 * A value against its limit. Kept whether it holds or not, so that the tightest places of a sound design can be read.
 * Values and limits are finite, in the kind's SI unit.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface Comparison {

    /** Which side of the limit is right. */
    enum Sense {
        /** value ≤ high. */
        AT_MOST,
        /** value ≥ low. */
        AT_LEAST,
        /** low ≤ value ≤ high. */
        WITHIN
    }

    /** {@return which side of the limit is right} */
    Sense sense();

    /** {@return the value, in the kind's SI unit} */
    double value();

    /** {@return what is compared} */
    QuantityKind kind();

    /** {@return names of the rule's own limits that set {@link #low} or {@link #high}; null where the design sets it} */
    @Nullable
    String limits();

    /** {@return the lower limit} Throws {@link IllegalStateException} where there is none. */
    default double low() {
        throw new IllegalStateException("no lower limit");
    }

    /** {@return the upper limit} Throws {@link IllegalStateException} where there is none. */
    default double high() {
        throw new IllegalStateException("no upper limit");
    }

    /** {@return whether the value is on the right side} The limit itself is right. */
    boolean holds();

    /** {@return the same comparison, its limits being those of the rule with these names} */
    Comparison setBy(@Nullable String names);

    /** value ≤ high. */
    record AtMost(
            double value,
            double high,
            QuantityKind kind,
            @Nullable String limits) implements Comparison {
        public AtMost {
            finite(value, high);
        }

        @Override
        public Sense sense() {
            return Sense.AT_MOST;
        }

        @Override
        public boolean holds() {
            return value <= high;
        }

        @Override
        public AtMost setBy(@Nullable String names) {
            return new AtMost(value, high, kind, names);
        }
    }

    /** value ≥ low. */
    record AtLeast(
            double value,
            double low,
            QuantityKind kind,
            @Nullable String limits) implements Comparison {
        public AtLeast {
            finite(value, low);
        }

        @Override
        public Sense sense() {
            return Sense.AT_LEAST;
        }

        @Override
        public boolean holds() {
            return value >= low;
        }

        @Override
        public AtLeast setBy(@Nullable String names) {
            return new AtLeast(value, low, kind, names);
        }
    }

    /** low ≤ value ≤ high. */
    record Within(
            double value,
            double low,
            double high,
            QuantityKind kind,
            @Nullable String limits) implements Comparison {
        public Within {
            finite(value, low, high);
            if (low > high) {
                throw new IllegalArgumentException("no value lies within " + low + " to " + high);
            }
        }

        @Override
        public Sense sense() {
            return Sense.WITHIN;
        }

        @Override
        public boolean holds() {
            return value >= low && value <= high;
        }

        @Override
        public Within setBy(@Nullable String names) {
            return new Within(value, low, high, kind, names);
        }
    }

    /** {@return value ≤ limit, the limit coming from the design or a table} */
    static Comparison atMost(double value, double limit, QuantityKind kind) {
        return new AtMost(value, limit, kind, null);
    }

    /** {@return value ≤ a limit of the rule} */
    static Comparison atMost(double value, Limit limit) {
        return new AtMost(value, limit.value(), limit.kind(), limit.name());
    }

    /** {@return value ≥ limit, the limit coming from the design or a table} */
    static Comparison atLeast(double value, double limit, QuantityKind kind) {
        return new AtLeast(value, limit, kind, null);
    }

    /** {@return value ≥ a limit of the rule} */
    static Comparison atLeast(double value, Limit limit) {
        return new AtLeast(value, limit.value(), limit.kind(), limit.name());
    }

    /** {@return low ≤ value ≤ high, the limits coming from the design or a table} */
    static Comparison within(double value, double low, double high, QuantityKind kind) {
        return new Within(value, low, high, kind, null);
    }

    /** {@return low ≤ value ≤ high, both limits of the rule} */
    static Comparison within(double value, Limit low, Limit high) {
        return new Within(value, low.value(), high.value(), low.kind(), low.name() + ", " + high.name());
    }

    /** {@return whether a limit of the rule sets {@link #low} or {@link #high}} */
    default boolean isSetBy(String limit) {
        String names = limits();
        return names != null && List.of(names.split(", ", -1)).contains(limit);
    }

    /** {@return the limit that the value is beyond or, where it holds, nearest to, in the kind's SI unit} */
    default double nearestLimit() {
        return switch (sense()) {
            case AT_MOST -> high();
            case AT_LEAST -> low();
            case WITHIN -> share(high() - value(), high()) <= share(value() - low(), low()) ? high() : low();
        };
    }

    /**
     * {@return how far the value is from its nearest limit, as a share of that limit; negative where it does not hold}
     *
     * <p>A temperature's share is taken from 0 °C. Against a limit of zero the margin is 1 on the right side, −1 on the
     * wrong one, 0 on it.
     */
    default double margin() {
        return switch (sense()) {
            case AT_MOST -> share(high() - value(), high());
            case AT_LEAST -> share(value() - low(), low());
            case WITHIN -> Math.min(share(high() - value(), high()), share(value() - low(), low()));
        };
    }

    private double share(double distance, double limit) {
        double scale = Math.abs(kind() == QuantityKind.TEMPERATURE ? limit - 273.15 : limit);
        return scale < 1e-12 ? Math.signum(distance) : distance / scale;
    }

    private static void finite(double... numbers) {
        for (double number : numbers) {
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("cannot compare " + number);
            }
        }
    }
}
