package org.leat.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Measured;
import org.leat.quantity.QuantityText;

/** A design as the tree of a file: what is absent is left out. */
final class DesignTree {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Pattern BARE_NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private DesignTree() {}

    static ObjectNode of(Record record) {
        return fields(Shape.of(record.getClass()), record, null);
    }

    private static ObjectNode fields(Shape shape, Object record, @Nullable String kind) {
        ObjectNode out = NODES.objectNode();
        if (kind != null) {
            out.put("kind", kind);
        }
        for (Shape.Field field : shape.fields()) {
            Object value = Shape.get(record, field);
            if (value != null && !(value instanceof List<?> list && list.isEmpty() && !field.canBeAbsent())) {
                out.set(field.key(), node(field.type(), value));
            }
        }
        return out;
    }

    private static JsonNode node(ValueType type, Object value) {
        if (type instanceof ValueType.OfList list) {
            ArrayNode out = NODES.arrayNode();
            ((List<?>) value).forEach(item -> out.add(node(list.item(), item)));
            return out;
        }
        if (type instanceof ValueType.OfChoice choice) {
            Shape shape = Shape.of(value.getClass());
            if (value.getClass() == choice.plain()) {
                Shape.Field only = shape.fields().get(0);
                Object plain = Shape.get(value, only);
                return node(only.type(), Objects.requireNonNull(plain));
            }
            return fields(shape, value, Names.ofComponent(value.getClass().getSimpleName()));
        }
        if (type instanceof ValueType.OfRecord) {
            return fields(Shape.of(value.getClass()), value, null);
        }
        return plain(value);
    }

    /** {@return a value of any shape as a file holds it} */
    static JsonNode any(Object value) {
        if (value instanceof List<?> list) {
            ArrayNode out = NODES.arrayNode();
            list.forEach(item -> out.add(any(item)));
            return out;
        }
        if (!(value instanceof Record record) || value instanceof Measured<?>) {
            return plain(value);
        }
        for (Class<?> choice : record.getClass().getInterfaces()) {
            if (choice.isSealed()) {
                return node(ValueType.of(choice), record);
            }
        }
        return of(record);
    }

    /** {@return a plain value as a file holds it} */
    static JsonNode plain(Object value) {
        if (value instanceof Quantity<?> quantity) {
            String text = QuantityText.print(quantity);
            return BARE_NUMBER.matcher(text).matches() ? NODES.numberNode(new BigDecimal(text)) : NODES.textNode(text);
        }
        if (value instanceof Measured<?> measured) {
            return NODES.textNode(QuantityText.print(measured));
        }
        if (value instanceof Integer whole) {
            return NODES.numberNode(whole);
        }
        if (value instanceof Double number) {
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("no file can hold " + number);
            }
            return NODES.numberNode(number);
        }
        if (value instanceof Boolean yes) {
            return NODES.booleanNode(yes);
        }
        return NODES.textNode(value instanceof Enum<?> word ? Names.ofConstant(word) : value.toString());
    }
}
