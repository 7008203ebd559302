package org.leat.file;

import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.design.Limits;
import org.leat.design.Plain;
import org.leat.design.Sample;
import org.leat.lazy.Once;
import org.leat.quantity.Measured;
import org.leat.quantity.QuantityKind;

/** What a field of a design file may hold, derived from the Java type of a record's component. */
sealed interface ValueType {

    /** Stands between what belongs somewhere and how it may be written. */
    String SAMPLE = ", such as ";

    /** What belongs here, in a few words. */
    String label();

    /**
     * A number with a unit.
     *
     * @param measured whether a tolerance may follow
     */
    record OfQuantity(QuantityKind kind, boolean measured) implements ValueType {
        @Override
        public String label() {
            return label(kind);
        }

        static String label(QuantityKind kind) {
            return ("aei".indexOf(kind.label().charAt(0)) < 0 ? "a " : "an ") + kind.label();
        }
    }

    /** A plain type. */
    enum Simple implements ValueType {
        WHOLE("a whole number"),
        NUMBER("a number"),
        YES_NO("true or false"),
        TEXT("text"),
        DAY("a day, as 2031-05-30"),
        PLAIN("a plain value");

        private final String label;

        Simple(String label) {
            this.label = label;
        }

        @Override
        public String label() {
            return label;
        }
    }

    /**
     * One word of several.
     *
     * @param ways the same by every way in which it may stand in a file
     */
    record OfWord(Class<?> type, Map<String, Object> words, Once<Map<Pattern, Object>> ways) implements ValueType {
        @Override
        public String label() {
            return "one of the words " + String.join(", ", words.keySet());
        }
    }

    /** A mapping. */
    record OfRecord(Class<?> type) implements ValueType {
        @Override
        public String label() {
            return "a mapping" + sample(type);
        }
    }

    /**
     * A mapping told apart by its kind.
     *
     * @param ways the same by every way in which the kind may stand in a file
     * @param plain the choice written as a plain value, or null
     */
    record OfChoice(
            Class<?> type,
            Map<String, Class<?>> kinds,
            Once<Map<Pattern, Class<?>>> ways,
            @Nullable Class<?> plain) implements ValueType {
        @Override
        public String label() {
            String mapping = "a mapping with kind: " + String.join(", ", kinds.keySet()) + sample(type);
            return plain == null
                    ? mapping
                    : Shape.of(plain).fields().get(0).type().label() + ", or " + mapping;
        }
    }

    /**
     * A list.
     *
     * @param most how many items it may have
     */
    record OfList(ValueType item, int most) implements ValueType {
        @Override
        public String label() {
            int sample = item.label().indexOf(SAMPLE);
            return sample < 0
                    ? "a list"
                    : "a list" + SAMPLE + "[" + item.label().substring(sample + SAMPLE.length()) + "]";
        }
    }

    /** A mapping whose keys are names. */
    record OfNames(ValueType value) implements ValueType {
        @Override
        public String label() {
            return "a mapping";
        }
    }

    /** {@return how a record or choice may be written, behind its label; empty where that is not told} */
    private static String sample(Class<?> type) {
        Sample sample = type.getAnnotation(Sample.class);
        return sample == null ? "" : SAMPLE + sample.value();
    }

    /** {@return a label without how the value may be written} */
    static String withoutSample(String label) {
        int sample = label.indexOf(SAMPLE);
        return sample < 0 ? label : label.substring(0, sample);
    }

    /** Whatever stands there, to be understood later. */
    record OfAny() implements ValueType {
        @Override
        public String label() {
            return "a value";
        }
    }

    /** {@return what a Java type is in a file} */
    static ValueType of(Type type) {
        if (type instanceof ParameterizedType p) {
            Type argument = p.getActualTypeArguments()[0];
            if (p.getRawType() == Map.class && argument == String.class) {
                return new OfNames(of(p.getActualTypeArguments()[1]));
            }
            if (p.getRawType() == List.class) {
                return new OfList(of(argument), Limits.MOST_ITEMS);
            }
            if (p.getRawType() == Quantity.class || p.getRawType() == Measured.class) {
                return new OfQuantity(QuantityKind.of((Class<?>) argument), p.getRawType() == Measured.class);
            }
        }
        if (!(type instanceof Class<?> c)) {
            throw new IllegalArgumentException("no file can hold " + type);
        }
        if (c == int.class || c == Integer.class) {
            return Simple.WHOLE;
        }
        if (c == double.class || c == Double.class) {
            return Simple.NUMBER;
        }
        if (c == boolean.class || c == Boolean.class) {
            return Simple.YES_NO;
        }
        if (c == String.class) {
            return Simple.TEXT;
        }
        if (c == LocalDate.class) {
            return Simple.DAY;
        }
        if (c == AnyValue.class) {
            return new OfAny();
        }
        if (c == PlainValue.class) {
            return Simple.PLAIN;
        }
        return ofOwn(c);
    }

    private static ValueType ofOwn(Class<?> type) {
        if (type.isEnum()) {
            Map<String, Object> words = new LinkedHashMap<>();
            for (Object constant : type.getEnumConstants()) {
                String word = Names.ofConstant((Enum<?>) constant);
                words.put(word, constant);
            }
            return new OfWord(
                    type,
                    Collections.unmodifiableMap(words),
                    new Once<>(() -> WaysWritten.patterns(words, constant -> element((Enum<?>) constant))));
        }
        if (type.isRecord()) {
            return new OfRecord(type);
        }
        if (!type.isSealed()) {
            throw new IllegalArgumentException("no file can hold " + type);
        }
        List<Class<?>> plain = new ArrayList<>();
        Map<String, Class<?>> kinds = new LinkedHashMap<>();
        for (Class<?> choice : type.getPermittedSubclasses()) {
            if (((AnnotatedElement) choice).isAnnotationPresent(Plain.class)) {
                plain.add(choice);
            } else {
                String kind = Names.ofComponent(choice.getSimpleName());
                kinds.put(kind, choice);
            }
        }
        return new OfChoice(
                type,
                Collections.unmodifiableMap(kinds),
                new Once<>(() -> WaysWritten.patterns(kinds, choice -> choice)),
                plain.isEmpty() ? null : plain.get(0));
    }

    /** {@return where the annotations of a constant stand} */
    static AnnotatedElement element(Enum<?> constant) {
        try {
            return constant.getDeclaringClass().getField(constant.name());
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException(e); // a constant is a field of its class
        }
    }
}
