package org.leat.expression;

import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import dev.cel.common.types.SimpleType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Plain;
import org.leat.file.Names;
import org.leat.quantity.Measured;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * The design's records as expressions see them, made from the records themselves: fields by their Java names, quantities by
 * their kinds, words as text. A choice has all fields of its kinds, and {@code kind}.
 */
final class DesignStructs {

    /** Alternatives are judged each as a design of its own; no rule looks at what is to be passed over. */
    private static final Set<String> NOT_JUDGED = Set.of("alternatives", "suppressions");

    private final Map<Class<?>, Struct> made = new LinkedHashMap<>();

    /** {@return everything made so far} */
    List<Struct> all() {
        return List.copyOf(made.values());
    }

    Struct of(Class<?> type) {
        Struct known = made.get(type);
        if (known != null) {
            return known;
        }
        About about = type.getAnnotation(About.class);
        Struct struct = new Struct(name(type), about == null ? "" : about.value());
        made.put(type, struct);
        if (type.isRecord()) {
            record(struct, type);
        } else {
            struct.add(new Struct.Field(
                    "kind",
                    SimpleType.STRING,
                    null,
                    null,
                    "which of the kinds it is",
                    "kind",
                    (o, path) -> o.getClass().isAnnotationPresent(Plain.class)
                            ? null
                            : Names.ofComponent(o.getClass().getSimpleName())));
            for (Class<?> choice : type.getPermittedSubclasses()) {
                record(struct, choice);
            }
        }
        return struct;
    }

    private static String name(Class<?> type) {
        Class<?> in = type.getEnclosingClass();
        return "design." + (in == null ? "" : in.getSimpleName() + ".") + type.getSimpleName();
    }

    private void record(Struct struct, Class<?> type) {
        for (RecordComponent component : type.getRecordComponents()) {
            if (type == Design.class && NOT_JUDGED.contains(component.getName())) {
                continue;
            }
            Struct.Field field = field(component);
            if (field != null) {
                struct.merge(field);
            }
        }
    }

    private Struct.@Nullable Field field(RecordComponent component) {
        String name = component.getName();
        String key = Names.ofComponent(name);
        About about = component.getAnnotation(About.class);
        String meaning = about == null ? "" : about.value();
        Typed typed = typed(component.getGenericType());
        if (typed == null) {
            return null;
        }
        return new Struct.Field(name, typed.type(), typed.kind(), typed.nested(), meaning, key, (o, path) -> {
            Object value = component.getDeclaringRecord().isInstance(o) ? get(component, o) : null;
            return value == null ? null : typed.view().apply(value, ElementPath.field(path, key));
        });
    }

    private static @Nullable Object get(RecordComponent component, Object of) {
        try {
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private record Typed(
            CelType type,
            @Nullable QuantityKind kind,
            @Nullable Struct nested,
            BiFunction<Object, String, Object> view) {}

    private @Nullable Typed typed(Type type) {
        if (type instanceof ParameterizedType p) {
            Type argument = p.getActualTypeArguments()[0];
            if (p.getRawType() == List.class) {
                return list(typed(argument));
            }
            if (argument instanceof Class<?> measured) {
                QuantityKind kind = QuantityKind.of(measured);
                return new Typed(
                        Kinds.type(kind),
                        kind,
                        null,
                        (v, path) -> Kinds.value(kind, v instanceof Measured<?> m ? m.si() : Si.of((Quantity<?>) v)));
            }
            return null;
        }
        if (!(type instanceof Class<?> c)) {
            return null;
        }
        if (c == int.class || c == Integer.class) {
            return new Typed(SimpleType.INT, null, null, (v, path) -> ((Integer) v).longValue());
        }
        if (c == double.class || c == Double.class) {
            return new Typed(SimpleType.DOUBLE, null, null, (v, path) -> v);
        }
        if (c == boolean.class || c == Boolean.class) {
            return new Typed(SimpleType.BOOL, null, null, (v, path) -> v);
        }
        if (c == String.class) {
            return new Typed(SimpleType.STRING, null, null, (v, path) -> v);
        }
        if (c.isEnum()) {
            return new Typed(SimpleType.STRING, null, null, (v, path) -> Names.ofConstant((Enum<?>) v));
        }
        if (!c.isRecord() && !c.isSealed()) {
            return null; // a day: nothing that a plant is judged by
        }
        Struct nested = of(c);
        return new Typed(nested.type(), null, nested, (v, path) -> new View(nested, v, path, ""));
    }

    private static @Nullable Typed list(@Nullable Typed item) {
        if (item == null) {
            return null;
        }
        return new Typed(ListType.create(item.type()), item.kind(), item.nested(), (v, path) -> {
            List<?> items = (List<?>) v;
            List<String> paths = ElementPath.items(path, items);
            List<Object> views = new ArrayList<>(items.size());
            for (int i = 0; i < items.size(); i++) {
                views.add(item.view().apply(items.get(i), paths.get(i)));
            }
            return views;
        });
    }
}
