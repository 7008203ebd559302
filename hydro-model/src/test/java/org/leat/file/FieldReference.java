package org.leat.file;

import java.lang.reflect.AnnotatedElement;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leat.design.About;
import org.leat.design.AlsoWritten;
import org.leat.design.Design;
import org.leat.design.Limits;
import org.leat.quantity.QuantityKind;

/** The field reference of the docs, made from the records. */
final class FieldReference {

    private final Map<String, String> sections = new LinkedHashMap<>();

    private FieldReference() {}

    static String markdown() {
        FieldReference reference = new FieldReference();
        reference.record(Design.class, "design", null);
        return String.join("\n", reference.sections.values());
    }

    private void record(Class<?> type, String name, String kind) {
        if (sections.containsKey(name)) {
            return;
        }
        StringBuilder out = new StringBuilder("### " + name + "\n\n" + DesignSchema.about(type) + ".\n\n");
        sections.put(name, "");
        out.append("| field | value | needed | about |\n|---|---|---|---|\n");
        if (kind != null) {
            out.append("| `kind` | `" + kind + "`" + also(type) + " | yes | |\n");
        }
        for (Shape.Field field : Shape.of(type).fields()) {
            out.append("| `" + field.key() + "` | " + value(field.type())
                    + also(field.component()).replace("#", "5") + limits(field) + " | "
                    + (field.required() ? "yes" : "") + " | " + field.about() + " |\n");
        }
        sections.put(name, out.toString());
        Shape.of(type).fields().forEach(field -> follow(field.type()));
    }

    private void follow(ValueType type) {
        if (type instanceof ValueType.OfList list) {
            follow(list.item());
        } else if (type instanceof ValueType.OfRecord record) {
            record(record.type(), Names.ofComponent(record.type().getSimpleName()), null);
        } else if (type instanceof ValueType.OfChoice choice) {
            choice.kinds()
                    .forEach((kind, record) ->
                            record(record, Names.ofComponent(choice.type().getSimpleName()) + ", kind " + kind, kind));
        } else if (type instanceof ValueType.OfWord word) {
            word(word);
        }
    }

    private void word(ValueType.OfWord word) {
        String name = Names.ofComponent(word.type().getSimpleName());
        sections.computeIfAbsent(
                name,
                n -> "### " + name + "\n\n"
                        + word.type().getAnnotation(About.class).value() + ": "
                        + word.words().entrySet().stream()
                                .map(w -> "`" + w.getKey() + "`" + also(ValueType.element((Enum<?>) w.getValue())))
                                .collect(Collectors.joining(", "))
                        + ".\n");
    }

    /** What is read besides. */
    private static String also(AnnotatedElement element) {
        AlsoWritten also = element.getAnnotation(AlsoWritten.class);
        return also == null
                ? ""
                : Stream.of(also.value()).map(w -> "`" + w + "`").collect(Collectors.joining(", ", " (also ", ")"));
    }

    private static String value(ValueType type) {
        if (type instanceof ValueType.OfList list) {
            return "list of " + value(list.item());
        }
        if (type instanceof ValueType.OfRecord record) {
            return link(Names.ofComponent(record.type().getSimpleName()));
        }
        if (type instanceof ValueType.OfWord word) {
            return link(Names.ofComponent(word.type().getSimpleName()));
        }
        if (type instanceof ValueType.OfChoice choice) {
            String name = Names.ofComponent(choice.type().getSimpleName());
            String kinds = choice.kinds().keySet().stream()
                    .map(kind -> "[" + kind + "](#" + anchor(name + ", kind " + kind) + ")")
                    .collect(Collectors.joining(", "));
            String plain = choice.plain() == null
                    ? ""
                    : value(Shape.of(choice.plain()).fields().get(0).type()) + ", or ";
            return plain + "mapping of kind " + kinds;
        }
        if (type instanceof ValueType.OfQuantity quantity) {
            return quantity.kind().label()
                    + (quantity.kind() == QuantityKind.RATIO ? "" : " in")
                    + SchemaText.units(quantity.kind()).replaceFirst("^ in", "")
                    + (quantity.measured() ? "; `±` tolerance" : "");
        }
        return type.label();
    }

    private static String limits(Shape.Field field) {
        Limits limits = field.limits();
        if (limits == null || !(field.type() instanceof ValueType.Simple)) {
            String least = limits != null && limits.items() > 0 ? ", at least " + limits.items() : "";
            return limits == null || limits.mostItems() == Limits.MOST_ITEMS
                    ? least
                    : least + ", at most " + limits.mostItems();
        }
        StringBuilder out = new StringBuilder();
        if (Double.isFinite(limits.atLeast())) {
            out.append(", at least ").append(number(limits.atLeast()));
        }
        if (Double.isFinite(limits.above())) {
            out.append(", more than ").append(number(limits.above()));
        }
        if (Double.isFinite(limits.atMost())) {
            out.append(", at most ").append(number(limits.atMost()));
        }
        return out.toString();
    }

    private static String number(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static String link(String name) {
        return "[" + name + "](#" + anchor(name) + ")";
    }

    private static String anchor(String name) {
        return name.replace(",", "").replace(' ', '-');
    }
}
