package org.leat.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.leat.design.ElementPath;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;

/**
 * Decimal commas within brackets and braces, where YAML takes them for the end of a value: {@code { length: 0,35 m }} is a
 * length of 0 and a field called {@code 35 m}. None is guessed at; each is told once, with what to write.
 */
final class Commas {

    private static final Pattern BEFORE = Pattern.compile("[+-]?\\d{1,15}");
    private static final Pattern BEHIND = Pattern.compile("\\d{1,15}(?: ?[^\\d\\s].{0,30})?");

    private Commas() {}

    /** {@return the fields that a comma has spoilt, after a problem for each} */
    static Set<String> inFields(Shape shape, Node.Fields map, String path, Problems problems) {
        Set<String> spoilt = new HashSet<>();
        List<String> keys = new ArrayList<>(map.fields().keySet());
        for (int i = 1; i < keys.size(); i++) {
            String key = keys.get(i);
            String before = keys.get(i - 1);
            if (!shape.byKey().containsKey(key)
                    && BEHIND.matcher(key).matches()
                    && map.fields().get(key) instanceof Node.Scalar nothing
                    && nothing.isNull()
                    && map.fields().get(before) instanceof Node.Scalar value
                    && BEFORE.matcher(value.text()).matches()) {
                Position end = map.keys().getOrDefault(key, value.at());
                String found = value.text() + "," + key;
                Position start = value.at();
                problems.add(
                        ProblemKind.DECIMAL_COMMA,
                        new Position(start.file(), start.line(), start.column(), end.endLine(), end.endColumn()),
                        ElementPath.field(path, before),
                        found,
                        shape.byKey().containsKey(before)
                                ? shape.byKey().get(before).type().label()
                                : "",
                        Correction.comma(found),
                        List.of());
                spoilt.add(key);
                spoilt.add(before);
            }
        }
        return spoilt;
    }

    /** {@return whether two items are one value that a comma has parted, or two of which one lacks its unit} */
    static boolean inList(ValueType item, Node first, Node second, String path, Problems problems) {
        if (!(item instanceof ValueType.OfQuantity quantity)
                || quantity.kind() == QuantityKind.RATIO
                || !(first instanceof Node.Scalar a)
                || !(second instanceof Node.Scalar b)
                || !BEFORE.matcher(a.text()).matches()
                || !(QuantityText.read(b.text(), quantity.kind()) instanceof QuantityText.Understood)) {
            return false;
        }
        Position start = a.at();
        Position end = b.at();
        boolean touching = end.line() == start.endLine() && end.column() == start.endColumn() + 1;
        String unit = b.text().replaceFirst("^[+-]?[\\d.]+(?:[eE][+-]?\\d+)?\\s*", "");
        String two = a.text() + " " + unit + ", " + b.text();
        boolean fraction = touching && b.text().matches("\\d+ ?[^\\d.].*");
        problems.add(
                fraction ? ProblemKind.DECIMAL_COMMA : ProblemKind.NO_UNIT,
                fraction
                        ? new Position(start.file(), start.line(), start.column(), end.endLine(), end.endColumn())
                        : start,
                path,
                fraction ? a.text() + "," + b.text() : a.text(),
                quantity.label(),
                fraction ? Correction.or(a.text() + "." + b.text(), two) : two,
                fraction ? List.of() : QuantityText.fitting(quantity.kind()));
        return true;
    }
}
