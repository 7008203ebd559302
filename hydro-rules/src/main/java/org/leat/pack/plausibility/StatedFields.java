package org.leat.pack.plausibility;

import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.tables.PlausibleRange;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.file.Names;
import org.leat.quantity.Measured;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Every field of a design for which the table has a range, in the order of the design's records. */
final class StatedFields {

    private static final ClassValue<List<Field>> FIELDS = new ClassValue<>() {
        @Override
        protected List<Field> computeValue(Class<?> record) {
            return Arrays.stream(record.getRecordComponents()).map(Field::of).toList();
        }
    };

    private final List<Stated> all = new ArrayList<>();

    private StatedFields() {}

    /**
     * A component of a record as a file has it.
     *
     * @param step below the record
     * @param kind of its quantity, or of those of its list; a ratio where it is none
     * @param accessor of its value
     */
    private record Field(String step, QuantityKind kind, Method accessor) {

        static Field of(RecordComponent component) {
            String step = "/" + Names.ofComponent(component.getName());
            return new Field(step, kind(component.getGenericType()), component.getAccessor());
        }

        private static QuantityKind kind(Type type) {
            if (!(type instanceof ParameterizedType parameterized)) {
                return QuantityKind.RATIO;
            }
            Type argument = parameterized.getActualTypeArguments()[0];
            Type raw = parameterized.getRawType();
            return raw == Quantity.class || raw == Measured.class
                    ? QuantityKind.of((Class<?>) argument)
                    : kind(argument);
        }

        @Nullable
        Object get(Record record) {
            try {
                return accessor.invoke(record);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e); // the records of a design are public and compute nothing
            }
        }
    }

    static List<Stated> of(Design design) {
        StatedFields fields = new StatedFields();
        fields.record("", "", design);
        return List.copyOf(fields.all);
    }

    /** The path of a field, and the same without the items of lists. */
    private void record(String path, String field, Record record) {
        for (Field each : FIELDS.get(record.getClass())) {
            value(path + each.step(), field + each.step(), each.kind(), each.get(record));
        }
    }

    private void value(String path, String field, QuantityKind kind, @Nullable Object value) {
        if (value instanceof List<?> items) {
            List<String> paths = ElementPath.items(path, items);
            for (int i = 0; i < items.size(); i++) {
                value(paths.get(i), field, kind, items.get(i));
            }
        } else if (value instanceof Measured<?> measured) {
            number(path, field, measured.si(), kind);
        } else if (value instanceof Record record) {
            record(path, field, record);
        } else if (value instanceof Quantity<?> quantity) {
            number(path, field, Si.of(quantity), kind);
        } else if (value instanceof Number number) {
            number(path, field, number.doubleValue(), kind);
        }
    }

    private void number(String path, String field, double value, QuantityKind kind) {
        PlausibleRange.ofField(field).ifPresent(range -> all.add(new Stated(path, range, value, kind)));
    }
}
