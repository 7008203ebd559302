package org.leat.expression;

import com.google.common.collect.ImmutableMap;
import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import dev.cel.common.types.SimpleType;
import dev.cel.common.types.StructType;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;

/** What expressions see of one thing: named fields, each with a type and a way to read it from a Java object. */
final class Struct {

    private final String name;
    private final String meaning;
    private final Map<String, Field> fields = new LinkedHashMap<>();

    Struct(String name, String meaning) {
        this.name = name;
        this.meaning = meaning;
    }

    /**
     * One field.
     *
     * @param kind what it measures; null for what is no number with a unit
     * @param nested what it holds; null for a plain value
     * @param read from the object and its path; null where it is not given
     * @param settles the path, below the object's own, of the design's field that gives it; "" for none
     */
    record Field(
            String name,
            CelType type,
            @Nullable QuantityKind kind,
            @Nullable Struct nested,
            String meaning,
            String settles,
            BiFunction<Object, String, @Nullable Object> read) {}

    String name() {
        return name;
    }

    String meaning() {
        return meaning;
    }

    Collection<Field> fields() {
        return Collections.unmodifiableCollection(fields.values());
    }

    @Nullable
    Field field(String key) {
        return fields.get(key);
    }

    void add(Field field) {
        if (fields.put(field.name(), field) != null) {
            throw new IllegalStateException("twice in " + name + ": " + field.name());
        }
    }

    /** A field that another kind of the same thing may have too. */
    void merge(Field field) {
        Field known = fields.get(field.name());
        if (known == null) {
            add(field);
            return;
        }
        if (!known.type().equals(field.type())) {
            throw new IllegalStateException(name + " has two types of " + field.name());
        }
        fields.put(
                field.name(),
                new Field(
                        known.name(),
                        known.type(),
                        known.kind(),
                        known.nested(),
                        known.meaning(),
                        known.settles(),
                        (o, path) -> {
                            Object value = known.read().apply(o, path);
                            return value == null ? field.read().apply(o, path) : value;
                        }));
    }

    /** {@return the type that the compiler checks by} */
    CelType type() {
        ImmutableMap.Builder<String, CelType> types = ImmutableMap.builder();
        fields.values().forEach(field -> types.put(field.name(), field.type()));
        ImmutableMap<String, CelType> byName = types.buildOrThrow();
        return StructType.create(name, byName.keySet(), key -> Optional.ofNullable(byName.get(key)));
    }

    /** Fills in a struct over objects of one class. */
    static final class Filling<T> {
        private final Struct struct;
        private final Class<T> type;

        Filling(String name, String meaning, Class<T> type) {
            this.struct = new Struct(name, meaning);
            this.type = type;
        }

        Struct struct() {
            return struct;
        }

        private Filling<T> add(
                String key,
                CelType cel,
                @Nullable QuantityKind kind,
                @Nullable Struct nested,
                String meaning,
                String settles,
                BiFunction<T, String, @Nullable Object> read) {
            struct.add(
                    new Field(key, cel, kind, nested, meaning, settles, (o, path) -> read.apply(type.cast(o), path)));
            return this;
        }

        /** A number that every plant has, in SI. */
        Filling<T> of(String key, QuantityKind kind, String meaning, Function<T, Double> read) {
            return add(key, Kinds.type(kind), kind, null, meaning, "", (o, path) -> Kinds.value(kind, read.apply(o)));
        }

        /** A number that the plant has or says why it has not. */
        Filling<T> amount(String key, QuantityKind kind, String meaning, Function<T, Amount> read) {
            return add(key, Kinds.type(kind), kind, null, meaning, "", (o, path) -> {
                Amount amount = read.apply(o);
                if (amount instanceof Amount.Unknown unknown) {
                    throw new MissingValueException(unknown);
                }
                return Kinds.value(kind, ((Amount.Known) amount).value());
            });
        }

        Filling<T> text(String key, String meaning, Function<T, String> read) {
            return add(key, SimpleType.STRING, null, null, meaning, "", (o, path) -> read.apply(o));
        }

        Filling<T> yes(String key, String meaning, Function<T, Boolean> read) {
            return add(key, SimpleType.BOOL, null, null, meaning, "", (o, path) -> read.apply(o));
        }

        Filling<T> whole(String key, String meaning, Function<T, Integer> read) {
            return add(key, SimpleType.INT, null, null, meaning, "", (o, path) -> (long) read.apply(o));
        }

        /** Things of a kind, each a {@link View}. */
        Filling<T> list(String key, Struct nested, String meaning, Function<T, List<View>> read) {
            return add(key, ListType.create(nested.type()), null, nested, meaning, "", (o, path) -> read.apply(o));
        }
    }
}
