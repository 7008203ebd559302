package org.leat.expression;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;

/** One thing as expressions see it: its fields are read when they are asked for. */
public final class View extends AbstractMap<String, Object> {

    private final Struct struct;
    private final Object object;
    private final String path;
    private final String during;

    private final @Nullable Notes notes;

    /** What was read, while an expression is evaluated: it asks whether there is a value, then for the value. */
    private final Map<String, Object> read = new HashMap<>();

    View(Struct struct, Object object, String path, String during) {
        this(struct, object, path, during, null);
    }

    private View(Struct struct, Object object, String path, String during, @Nullable Notes notes) {
        this.struct = struct;
        this.object = object;
        this.path = path;
        this.during = during;
        this.notes = notes;
    }

    /** {@return the same thing, where it and what it holds note what was asked for and is not given, and what it costs} */
    static Object noting(Object value, @Nullable Notes notes) {
        if (value instanceof View view) {
            return new View(view.struct, view.object, view.path, view.during, notes);
        }
        if (!(value instanceof List<?> list)) {
            return value;
        }
        if (notes != null) {
            notes.spend(list.size());
        }
        return list.stream().map(item -> noting(item, notes)).toList();
    }

    /** {@return where it stands in the design} */
    public String path() {
        return path;
    }

    /** {@return the case it belongs to; "" for none} */
    public String during() {
        return during;
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
        Struct.Field field = struct.field(String.valueOf(key));
        if (field == null) {
            return false;
        }
        try {
            get(field);
            return true;
        } catch (MissingValueException e) {
            if (notes != null) {
                notes.missing(field.name(), e);
            }
            return false;
        }
    }

    /** {@return the value of a field; null for one that nobody has} */
    @Override
    public @Nullable Object get(@Nullable Object key) {
        Struct.Field field = struct.field(String.valueOf(key));
        return field == null ? null : get(field);
    }

    private Object get(Struct.Field field) {
        Object before = notes == null ? null : read.get(field.name());
        if (before != null) {
            return before;
        }
        Object value = noting(value(field), notes);
        if (notes != null) {
            read.put(field.name(), value);
        }
        return value;
    }

    private Object value(Struct.Field field) {
        Object value = field.read().apply(object, path);
        if (value == null) {
            throw new MissingValueException(ElementPath.field(path, field.settles()));
        }
        return value;
    }

    /** By its field names alone, so that nothing is read that was not asked for. */
    @Override
    public Set<Map.Entry<String, Object>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public int size() {
                return struct.fields().size();
            }

            @Override
            public Iterator<Map.Entry<String, Object>> iterator() {
                return struct.fields().stream()
                        .<Map.Entry<String, Object>>map(f -> new SimpleImmutableEntry<>(f.name(), f.name()))
                        .iterator();
            }
        };
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
