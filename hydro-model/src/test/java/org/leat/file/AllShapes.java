package org.leat.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leat.design.Design;
import org.leat.design.Gauging;

/** Every record that a design or a gauging is made of. */
final class AllShapes {

    private AllShapes() {}

    static List<Shape> list() {
        Map<Class<?>, Shape> found = new LinkedHashMap<>();
        Deque<ValueType> open =
                new ArrayDeque<>(List.of(new ValueType.OfRecord(Design.class), new ValueType.OfRecord(Gauging.class)));
        while (!open.isEmpty()) {
            ValueType type = open.pop();
            List<Class<?>> records = new ArrayList<>();
            if (type instanceof ValueType.OfList list) {
                open.add(list.item());
            } else if (type instanceof ValueType.OfNames names) {
                open.add(names.value());
            } else if (type instanceof ValueType.OfRecord record) {
                records.add(record.type());
            } else if (type instanceof ValueType.OfChoice choice) {
                records.addAll(choice.kinds().values());
                if (choice.plain() != null) {
                    records.add(choice.plain());
                }
            }
            for (Class<?> record : records) {
                if (found.putIfAbsent(record, Shape.of(record)) == null) {
                    Shape.of(record).fields().forEach(field -> open.add(field.type()));
                }
            }
        }
        return List.copyOf(found.values());
    }
}
