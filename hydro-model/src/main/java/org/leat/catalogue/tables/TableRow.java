package org.leat.catalogue.tables;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** A record as a row of a table: each component has the column of its name. */
final class TableRow<T> {

    private final Constructor<T> constructor;
    private final Class<?>[] types;
    private final Map<String, Integer> columns = new HashMap<>();

    private TableRow(Constructor<T> constructor, RecordComponent[] components) {
        this.constructor = constructor;
        this.types = constructor.getParameterTypes();
        for (int i = 0; i < components.length; i++) {
            columns.put(components[i].getName(), i);
        }
    }

    /** {@return the rows that are records of this class} */
    static <T> TableRow<T> of(Class<T> row) {
        RecordComponent[] components = row.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < types.length; i++) {
            types[i] = components[i].getType();
        }
        try {
            Constructor<T> constructor = row.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return new TableRow<>(constructor, components);
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException("no record: " + row, e);
        }
    }

    /**
     * {@return the row that has begun, to its end}
     *
     * @throws IllegalArgumentException for a column that the record does not have, a value that is not there, or one of
     *     another type
     */
    T read(CsvParser csv) throws IOException {
        @Nullable Object[] values = new Object[types.length];
        boolean[] read = new boolean[types.length];
        while (csv.nextToken() == JsonToken.FIELD_NAME) {
            String column = csv.currentName();
            Integer at = columns.get(column);
            if (at == null) {
                throw new IllegalArgumentException("a column that is not asked for: " + column);
            }
            csv.nextToken();
            values[at] = value(types[at], csv.getText());
            read[at] = true;
        }
        for (boolean one : read) {
            if (!one) {
                throw new IllegalArgumentException("a column is missing");
            }
        }
        return made(values);
    }

    private T made(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw new IllegalArgumentException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static Object value(Class<?> type, String text) {
        if (type == String.class) {
            return text;
        } else if (type == double.class) {
            return Double.valueOf(text);
        } else if (type == int.class) {
            return Integer.valueOf(text);
        } else if (type == OptionalDouble.class) {
            return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
        } else if (type == boolean.class && (text.equals("true") || text.equals("false"))) {
            return text.equals("true");
        } else if (type.isEnum()) {
            for (Object constant : type.getEnumConstants()) {
                if (((Enum<?>) constant).name().equals(text)) {
                    return constant;
                }
            }
        }
        throw new IllegalArgumentException("no " + type.getSimpleName() + ": " + text);
    }
}
