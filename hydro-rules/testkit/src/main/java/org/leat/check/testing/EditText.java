package org.leat.check.testing;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.file.Names;
import org.leat.quantity.Measured;
import org.leat.quantity.QuantityText;

/** What a way out puts somewhere, in one line and in the words of a design file. */
final class EditText {

    private EditText() {}

    static String of(@Nullable Object value) {
        if (value == null) {
            return "null";
        }
        if (value instanceof Quantity<?> quantity) {
            return QuantityText.print(quantity);
        }
        if (value instanceof Measured<?> measured) {
            return QuantityText.print(measured);
        }
        if (value instanceof Enum<?> word) {
            return Names.ofConstant(word);
        }
        if (value instanceof List<?> list) {
            return "[" + String.join(", ", list.stream().map(EditText::of).toList()) + "]";
        }
        return value instanceof Record record ? fields(record) : value.toString();
    }

    /** The kind first, where there are several. */
    private static String fields(Record record) {
        List<String> fields = new ArrayList<>();
        for (Class<?> kinds : record.getClass().getInterfaces()) {
            if (kinds.isSealed()) {
                fields.add("kind: " + Names.ofComponent(record.getClass().getSimpleName()));
            }
        }
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Object value = value(record, component);
            if (value != null && !(value instanceof List<?> list && list.isEmpty())) {
                fields.add(Names.ofComponent(component.getName()) + ": " + of(value));
            }
        }
        return "{" + String.join(", ", fields) + "}";
    }

    private static @Nullable Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e); // the design's records are public
        }
    }
}
