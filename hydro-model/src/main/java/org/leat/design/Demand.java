package org.leat.design;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.ImpossibleValueException.Fault;
import org.leat.quantity.Measured;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.quantity.Si;
import org.leat.quantity.TradeUnit;
import org.leat.quantity.TradeUnits;

/**
 * What a record demands of its components: collects the faults of a compact constructor and throws them together. The
 * {@link Limits} written at the components are held here, so that a design built in code is refused for the same
 * reasons as one read from a file.
 */
@API(status = API.Status.STABLE, since = "0.1")
public final class Demand {

    /** Annotations are looked up once for each record: their parsing costs more than all the checks. */
    private record Demanded(
            String name,
            boolean optional,
            @CanBeAbsent @Nullable Limits limits) {}

    private static final ClassValue<List<Demanded>> COMPONENTS = new ClassValue<>() {
        @Override
        protected List<Demanded> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(c -> new Demanded(
                            c.getName(), c.isAnnotationPresent(CanBeAbsent.class), c.getAnnotation(Limits.class)))
                    .toList();
        }
    };

    private final List<Fault> faults = new ArrayList<>();

    private Demand() {}

    /**
     * Begins a record's demands: that what is not optional is there, and the limits written at its components.
     *
     * @param type the record
     * @param values its components, in their order
     */
    public static Demand limits(Class<? extends Record> type, @Nullable Object... values) {
        Demand demand = new Demand();
        List<Demanded> components = COMPONENTS.get(type);
        for (int i = 0; i < components.size(); i++) {
            Demanded component = components.get(i);
            if (values[i] == null && !component.optional()) {
                demand.faults.add(new Fault(component.name(), print(null), "a value"));
            }
            demand.faults.addAll(faults(component.name(), component.limits(), values[i]));
        }
        return demand;
    }

    /** {@return the faults of one value against the limits written at its component; none where it is absent} */
    public static List<Fault> faults(RecordComponent component, @Nullable Object value) {
        return faults(component.getName(), component.getAnnotation(Limits.class), value);
    }

    private static List<Fault> faults(String field, @Nullable Limits limits, @Nullable Object value) {
        if (value == null) {
            return List.of();
        }
        if (value instanceof List<?> list) {
            List<Fault> faults = new ArrayList<>();
            int least = limits == null ? 0 : limits.items();
            int most = mostItems(limits);
            if (list.size() < least) {
                faults.add(new Fault(field, list.size() + " items", "at least " + least));
            } else if (list.size() > most) {
                faults.add(new Fault(field, list.size() + " items", "at most " + most));
                return faults;
            }
            for (Object item : list) {
                if (item != null) {
                    faults.addAll(one(field, limits, item));
                }
            }
            return faults;
        }
        return one(field, limits, value);
    }

    /** {@return how many items a list may have at most} */
    public static int mostItems(@Nullable Limits limits) {
        return limits == null ? Limits.MOST_ITEMS : limits.mostItems();
    }

    /** Adds a fault unless the condition holds. */
    public Demand that(boolean holds, String field, @Nullable Object found, String expected) {
        if (!holds) {
            faults.add(new Fault(field, print(found), expected));
        }
        return this;
    }

    /** Throws the faults, if there are any. */
    public void hold() {
        if (!faults.isEmpty()) {
            throw new ImpossibleValueException(faults);
        }
    }

    private static List<Fault> one(String field, @Nullable Limits limits, Object value) {
        if (value instanceof String text) {
            String expected = Texts.expected(field, text);
            return expected == null ? List.of() : List.of(new Fault(field, Texts.shown(text), expected));
        }
        OptionalDouble number = si(value);
        if (number.isEmpty()) {
            return List.of();
        }
        double si = number.getAsDouble();
        String expected = limits == null ? null : beyond(limits, si, value);
        if (expected == null) {
            expected = outOfReach(si, limits, value);
        }
        if (expected == null && value instanceof Measured<?> m) {
            expected = tolerance(limits, m);
        }
        return expected == null ? List.of() : List.of(new Fault(field, print(value), expected));
    }

    private static @Nullable String beyond(Limits limits, double si, Object value) {
        if (!(si >= limits.atLeast())) {
            return "at least " + limit(limits.atLeast(), value);
        } else if (limits.above() > Double.NEGATIVE_INFINITY && !(si > limits.above())) {
            return "more than " + limit(limits.above(), value);
        }
        return si <= limits.atMost() ? null : "at most " + limit(limits.atMost(), value);
    }

    /** What no plant has, however unusual: a solver need not cope with it. */
    private static @Nullable String outOfReach(double si, @Nullable Limits limits, Object value) {
        QuantityKind kind = kind(value);
        if (kind == null) {
            return null; // a unit of someone else's
        }
        double size = Math.abs(si);
        int sign = si < 0 ? -1 : 1;
        if (!(size <= kind.greatest())) {
            return (si < 0 ? "at least " : "at most ") + limit(sign * kind.greatest(), value);
        }
        if (size == 0 || size >= kind.least()) {
            return null;
        }
        boolean none = limits == null || (limits.atLeast() <= 0 && !(limits.above() >= 0));
        return (none ? "0, or " : "") + (si < 0 ? "at most " : "at least ") + limit(sign * kind.least(), value);
    }

    private static @Nullable String tolerance(@Nullable Limits limits, Measured<?> m) {
        double size = m.plusMinusSi();
        QuantityKind kind = kind(m);
        if (limits != null && (limits.above() == 0 || limits.atLeast() > 0) && size >= m.si()) {
            return "a tolerance smaller than the value: what cannot be zero is known to be more";
        }
        return kind == null || size == 0 || (size >= kind.least() && size <= kind.greatest())
                ? null
                : "a tolerance of 0, or from " + limit(kind.least(), m.plusMinus()) + " to "
                        + limit(kind.greatest(), m.plusMinus());
    }

    private static @Nullable QuantityKind kind(Object value) {
        Quantity<?> quantity = quantity(value);
        if (quantity == null) {
            return QuantityKind.RATIO;
        }
        TradeUnit unit = TradeUnits.find(quantity.getUnit());
        return unit == null ? null : unit.kind();
    }

    private static @Nullable Quantity<?> quantity(@Nullable Object value) {
        return value instanceof Measured<?> m ? m.value() : value instanceof Quantity<?> q ? q : null;
    }

    private static OptionalDouble si(Object value) {
        if (value instanceof Quantity<?> q) {
            return OptionalDouble.of(Si.of(q));
        }
        if (value instanceof Measured<?> m) {
            return OptionalDouble.of(m.si());
        }
        return value instanceof Number n ? OptionalDouble.of(n.doubleValue()) : OptionalDouble.empty();
    }

    /** A limit in the unit in which the value was given. */
    private static String limit(double si, @Nullable Object value) {
        Quantity<?> quantity = quantity(value);
        TradeUnit unit = quantity == null ? null : TradeUnits.find(quantity.getUnit());
        if (unit == null) {
            return si == Math.rint(si) && Math.abs(si) < 1e15
                    ? String.format(Locale.ROOT, "%.0f", si)
                    : Double.toString(si);
        }
        return QuantityText.show(si, unit.kind(), unit.symbol(), 6);
    }

    static String print(@Nullable Object value) {
        if (value == null) {
            return "nothing";
        }
        if (value instanceof Quantity<?> q && TradeUnits.find(q.getUnit()) != null) {
            return QuantityText.print(q);
        }
        if (value instanceof Measured<?> m && TradeUnits.find(m.value().getUnit()) != null) {
            return QuantityText.print(m);
        }
        if (value instanceof Double d && Double.isFinite(d)) {
            return BigDecimal.valueOf(d).stripTrailingZeros().toPlainString();
        }
        return String.valueOf(value);
    }
}
