package org.leat.expression;

import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import dev.cel.common.types.SimpleType;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import java.util.function.IntPredicate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.TradeUnit;

/** What can be done with quantities: units, comparing and adding like with like, scaling, and the products of the trade. */
final class Operators {

    /** First times second is the third; either divided out of the third is the other. */
    static final List<List<QuantityKind>> PRODUCTS = List.of(
            List.of(QuantityKind.VOLTAGE, QuantityKind.CURRENT, QuantityKind.POWER),
            List.of(QuantityKind.CURRENT, QuantityKind.RESISTANCE, QuantityKind.VOLTAGE),
            List.of(QuantityKind.POWER, QuantityKind.TIME, QuantityKind.ENERGY),
            List.of(QuantityKind.CURRENT, QuantityKind.TIME, QuantityKind.CHARGE),
            List.of(QuantityKind.CHARGE, QuantityKind.VOLTAGE, QuantityKind.ENERGY),
            List.of(QuantityKind.TORQUE, QuantityKind.ROTATIONAL_SPEED, QuantityKind.POWER),
            List.of(QuantityKind.SPEED, QuantityKind.AREA, QuantityKind.VOLUME_FLOW),
            List.of(QuantityKind.SPEED, QuantityKind.TIME, QuantityKind.LENGTH),
            List.of(QuantityKind.VOLUME_FLOW, QuantityKind.TIME, QuantityKind.VOLUME),
            List.of(QuantityKind.AREA, QuantityKind.LENGTH, QuantityKind.VOLUME),
            List.of(QuantityKind.PRESSURE, QuantityKind.AREA, QuantityKind.FORCE),
            List.of(QuantityKind.THERMAL_RESISTANCE, QuantityKind.POWER, QuantityKind.TEMPERATURE_DIFFERENCE),
            List.of(QuantityKind.LENGTH, QuantityKind.LENGTH, QuantityKind.AREA));

    private final List<Overload> all = new ArrayList<>();

    private Operators() {}

    static List<Overload> all() {
        Operators operators = new Operators();
        UnitWords.ALL.forEach(operators::unit);
        for (QuantityKind kind : QuantityKind.values()) {
            operators.ordered(kind);
            if (kind != QuantityKind.RATIO && kind != QuantityKind.TEMPERATURE) {
                operators.scaled(kind);
            }
        }
        operators.temperatures();
        PRODUCTS.forEach(p -> operators.product(p.get(0), p.get(1), p.get(2)));
        return List.copyOf(operators.all);
    }

    private void add(
            String name, CelType result, List<CelType> types, List<Class<?>> classes, Function<Object[], Object> body) {
        add(name, false, result, types, classes, body);
    }

    private void add(
            String name,
            boolean member,
            CelType result,
            List<CelType> types,
            List<Class<?>> classes,
            Function<Object[], Object> body) {
        all.add(new Overload(name, "leat_" + all.size(), member, result, types, classes, body));
    }

    private void unit(String word, TradeUnit unit) {
        CelType kind = Kinds.type(unit.kind());
        for (boolean member : List.of(false, true)) {
            add(
                    word,
                    member,
                    kind,
                    List.of(SimpleType.INT),
                    List.of(Long.class),
                    a -> Kinds.value(unit.kind(), unit.toSi(BigDecimal.valueOf((Long) a[0]))));
            add(
                    word,
                    member,
                    kind,
                    List.of(SimpleType.DOUBLE),
                    List.of(Double.class),
                    a -> Kinds.value(unit.kind(), unit.toSi(BigDecimal.valueOf((Double) a[0]))));
        }
    }

    /** Comparing, and the greatest and least of a list. */
    private void ordered(QuantityKind kind) {
        CelType type = Kinds.type(kind);
        if (kind != QuantityKind.RATIO) {
            compared("_<_", type, c -> c < 0);
            compared("_<=_", type, c -> c <= 0);
            compared("_>_", type, c -> c > 0);
            compared("_>=_", type, c -> c >= 0);
        }
        List<CelType> list = List.of(ListType.create(type));
        add("most", type, list, List.of(List.class), a -> reduced(kind, (List<?>) a[0], Math::max));
        add("least", type, list, List.of(List.class), a -> reduced(kind, (List<?>) a[0], Math::min));
        if (kind != QuantityKind.TEMPERATURE) {
            add("total", type, list, List.of(List.class), a -> reduced(kind, (List<?>) a[0], Double::sum));
        }
    }

    private void compared(String name, CelType type, IntPredicate holds) {
        pair(name, SimpleType.BOOL, type, type, a -> holds.test(((Magnitude) a[0]).against((Magnitude) a[1])));
    }

    private void pair(String name, CelType result, CelType left, CelType right, Function<Object[], Object> body) {
        add(name, result, List.of(left, right), List.of(Magnitude.class, Magnitude.class), body);
    }

    private static Object reduced(QuantityKind kind, List<?> list, DoubleBinaryOperator by) {
        if (list.isEmpty()) {
            throw new IllegalArgumentException("nothing in the list");
        }
        double result = number(list.get(0));
        for (Object item : list.subList(1, list.size())) {
            result = by.applyAsDouble(result, number(item));
        }
        return Kinds.value(kind, result);
    }

    private static double number(Object value) {
        return value instanceof Magnitude m ? m.si() : ((Number) value).doubleValue();
    }

    /** Adding, subtracting, and what a plain number does. */
    private void scaled(QuantityKind kind) {
        CelType type = Kinds.type(kind);
        pair("_+_", type, type, type, a -> made(kind, number(a[0]) + number(a[1])));
        pair("_-_", type, type, type, a -> made(kind, number(a[0]) - number(a[1])));
        pair("_/_", SimpleType.DOUBLE, type, type, a -> number(a[0]) / number(a[1]));
        add("-_", type, List.of(type), List.of(Magnitude.class), a -> made(kind, -number(a[0])));
        number(kind, type, SimpleType.INT, Long.class);
        number(kind, type, SimpleType.DOUBLE, Double.class);
    }

    private void number(QuantityKind kind, CelType type, CelType plain, Class<?> plainClass) {
        add(
                "_*_",
                type,
                List.of(type, plain),
                List.of(Magnitude.class, plainClass),
                a -> made(kind, number(a[0]) * number(a[1])));
        add(
                "_*_",
                type,
                List.of(plain, type),
                List.of(plainClass, Magnitude.class),
                a -> made(kind, number(a[0]) * number(a[1])));
        add(
                "_/_",
                type,
                List.of(type, plain),
                List.of(Magnitude.class, plainClass),
                a -> made(kind, number(a[0]) / number(a[1])));
    }

    /** Two temperatures have a difference, no sum. */
    private void temperatures() {
        QuantityKind kind = QuantityKind.TEMPERATURE;
        CelType point = Kinds.type(kind);
        CelType difference = Kinds.type(QuantityKind.TEMPERATURE_DIFFERENCE);
        pair(
                "_-_",
                difference,
                point,
                point,
                a -> made(QuantityKind.TEMPERATURE_DIFFERENCE, number(a[0]) - number(a[1])));
        pair("_+_", point, point, difference, a -> made(kind, number(a[0]) + number(a[1])));
        pair("_-_", point, point, difference, a -> made(kind, number(a[0]) - number(a[1])));
    }

    private void product(QuantityKind one, QuantityKind other, QuantityKind product) {
        times(one, other, product);
        divided(product, one, other);
        if (one != other) {
            times(other, one, product);
            divided(product, other, one);
        }
    }

    private void times(QuantityKind left, QuantityKind right, QuantityKind result) {
        pair(
                "_*_",
                Kinds.type(result),
                Kinds.type(left),
                Kinds.type(right),
                a -> made(result, number(a[0]) * number(a[1])));
    }

    private void divided(QuantityKind left, QuantityKind right, QuantityKind result) {
        pair(
                "_/_",
                Kinds.type(result),
                Kinds.type(left),
                Kinds.type(right),
                a -> made(result, number(a[0]) / number(a[1])));
    }

    private static Magnitude made(QuantityKind kind, double si) {
        return new Magnitude(kind, si);
    }
}
