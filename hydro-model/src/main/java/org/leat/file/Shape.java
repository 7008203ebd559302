package org.leat.file;

import java.lang.annotation.Annotation;
import java.lang.reflect.Constructor;
import java.lang.reflect.InaccessibleObjectException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.design.Limits;

/**
 * A record as a file shows it: its fields in order. Derived once for each record class.
 *
 * @param fields in the order of the components
 * @param byKey the same by their name in files
 */
record Shape(Class<?> type, List<Field> fields, Map<String, Field> byKey, Constructor<?> constructor) {

    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return derive(type);
        }
    };

    /**
     * One field.
     *
     * @param index among the components
     * @param key its name in files
     * @param required whether a file must state it
     */
    record Field(int index, RecordComponent component, String key, ValueType type, boolean required, Method accessor) {

        /** {@return the help written at the component; empty if there is none} */
        String about() {
            About about = component.getAnnotation(About.class);
            return about == null ? "" : about.value();
        }

        /** {@return whether it is nothing where a file leaves it out} Of a list that is something else than an empty one. */
        boolean canBeAbsent() {
            return component.isAnnotationPresent(CanBeAbsent.class);
        }

        /** {@return what may stand around a number here, see {@link WaysWritten#aroundNumber}; null for nothing} */
        @Nullable
        String around() {
            return WaysWritten.aroundNumber(component);
        }

        /** {@return the limits written at the component, or null} */
        @Nullable
        Limits limits() {
            return component.getAnnotation(Limits.class);
        }
    }

    static Shape of(Class<?> type) {
        return SHAPES.get(type);
    }

    /** {@return the record's {@code name}, or null if it has none} */
    @Nullable
    String nameOf(Object record) {
        Field name = byKey.get("name");
        return name == null ? null : (String) get(record, name);
    }

    /** {@return the value of a field} */
    static @Nullable Object get(Object record, Field field) {
        try {
            return field.accessor().invoke(record);
        } catch (InvocationTargetException e) {
            throw rethrown(e.getCause());
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return a record of these values} Throws what its constructor throws. */
    Object make(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw rethrown(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static RuntimeException rethrown(@Nullable Throwable e) {
        if (e instanceof Error error) {
            throw error;
        }
        return e instanceof RuntimeException r ? r : new IllegalStateException(e);
    }

    private static Shape derive(Class<?> type) {
        try {
            // a record of another module need not be public: its module opens the package to this one
            List<Field> fields = new ArrayList<>();
            Map<String, Field> byKey = new LinkedHashMap<>();
            RecordComponent[] components = type.getRecordComponents();
            Class<?>[] types = new Class<?>[components.length];
            for (int i = 0; i < components.length; i++) {
                RecordComponent c = components[i];
                types[i] = c.getType();
                Method accessor = c.getAccessor();
                accessor.setAccessible(true);
                String key = Names.ofComponent(c.getName());
                Field field = new Field(i, c, key, type(c), required(c), accessor);
                fields.add(field);
                byKey.put(key, field);
            }
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return new Shape(type, List.copyOf(fields), Collections.unmodifiableMap(byKey), constructor);
        } catch (ReflectiveOperationException | InaccessibleObjectException e) {
            throw new IllegalArgumentException("no file can hold " + type, e);
        }
    }

    private static ValueType type(RecordComponent c) {
        ValueType type = ValueType.of(c.getGenericType());
        return type instanceof ValueType.OfList list
                ? new ValueType.OfList(list.item(), Demand.mostItems(c.getAnnotation(Limits.class)))
                : type;
    }

    private static boolean required(RecordComponent c) {
        if (c.getType() == Map.class) {
            return false;
        }
        if (c.getType() == List.class) {
            Limits limits = c.getAnnotation(Limits.class);
            return limits != null && limits.items() > 0;
        }
        boolean absent = c.isAnnotationPresent(CanBeAbsent.class);
        for (Annotation a : c.getAnnotatedType().getAnnotations()) {
            if (!absent && a.annotationType().getName().equals("org.jspecify.annotations.Nullable")) {
                throw new IllegalArgumentException(c.getDeclaringRecord().getSimpleName() + "." + c.getName()
                        + " is @Nullable, but not @CanBeAbsent");
            }
        }
        return !absent;
    }
}
