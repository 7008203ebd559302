package org.leat.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.quantity.TradeUnit;
import org.leat.quantity.TradeUnits;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Patterns and words for the schema. ECMA 262 expressions without any option, as JSON Schema asks. */
final class SchemaText {

    private static final String NUMBER = "[0-9]{1,15}(\\.[0-9]{1,33})?([eE][+-]?[0-9]{1,4})?";
    private static final String WIRE_GAUGE = "AWG ?([0-9]{1,2}|[1-4]/0)|([0-9]{1,2}|[1-4]/0) ?AWG";

    private SchemaText() {}

    /** {@return the units of a kind for a description} */
    static String units(QuantityKind kind) {
        List<String> units = QuantityText.fitting(kind);
        String bare = kind == QuantityKind.RATIO ? " as a plain number or in " : " in ";
        return units.isEmpty() ? "" : bare + String.join(", ", units);
    }

    static String pattern(QuantityKind kind, boolean unsigned, boolean tolerance) {
        String value = one(kind, unsigned ? "\\+?" : "[+-]?");
        if (tolerance) {
            QuantityKind spread = kind == QuantityKind.TEMPERATURE ? QuantityKind.TEMPERATURE_DIFFERENCE : kind;
            value += "(\\s*(\u00b1|\\+/-|\\+-)\\s*" + one(spread, "\\+?") + ")?";
        }
        if (kind == QuantityKind.AREA && !tolerance) {
            value = value + "|" + WIRE_GAUGE;
        }
        if (kind == QuantityKind.PRESSURE) {
            value = value + "|PN ?[0-9]{1,2}(\\.[0-9]{1,2})?";
        }
        return "^\\s*(" + value + ")\\s*$";
    }

    private static String one(QuantityKind kind, String sign) {
        List<String> spellings = TradeUnits.of(kind).stream()
                .map(TradeUnit::spellings)
                .flatMap(List::stream)
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .toList();
        String units = spellings.stream()
                .filter(s -> !s.isEmpty())
                .map(SchemaText::escaped)
                .collect(Collectors.joining("|"));
        return sign + NUMBER + "[ \u00a0\u202f]*(" + units + ")" + (spellings.contains("") ? "?" : "");
    }

    private static String escaped(String spelling) {
        return spelling.replaceAll("([.*+?^${}()|\\[\\]\\\\/])", "\\\\$1");
    }

    /** {@return the JSON of a mapping written in one line} */
    static JsonNode json(String sample) {
        return json(Objects.requireNonNull(
                NodeReader.read(sample, "sample", new Problems()).root()));
    }

    private static JsonNode json(Node node) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (node instanceof Node.Fields map) {
            ObjectNode out = nodes.objectNode();
            map.fields().forEach((key, value) -> out.set(key, json(value)));
            return out;
        }
        if (node instanceof Node.Items items) {
            ArrayNode out = nodes.arrayNode();
            items.items().forEach(item -> out.add(json(item)));
            return out;
        }
        Node.Scalar scalar = (Node.Scalar) node;
        return scalar.tag().equals(Tag.INT)
                ? nodes.numberNode(Integer.parseInt(scalar.text()))
                : nodes.textNode(scalar.text());
    }
}
