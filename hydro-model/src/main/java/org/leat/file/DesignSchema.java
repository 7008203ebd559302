package org.leat.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.Design;
import org.leat.design.Limits;
import org.leat.design.Sample;
import org.leat.design.Texts;
import org.leat.quantity.QuantityKind;

/**
 * The JSON Schema (2020-12) of design files, made from the same records as the reader. It knows fields, words, units
 * and plain numbers' limits; how values must agree only the reader knows.
 */
@API(status = API.Status.STABLE, since = "0.1")
public final class DesignSchema {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String REF = "#/$defs/";

    private final Map<String, ObjectNode> defs = new TreeMap<>();
    private final boolean parts;

    private DesignSchema(boolean parts) {
        this.parts = parts;
    }

    /** {@return the schema as JSON text} */
    public static String json() {
        return DesignWriter.json(
                new DesignSchema(true).root("Design file, format " + DesignReader.FORMAT, Design.class));
    }

    /** {@return the schema of files that hold another record, in which no parts are taken} */
    static String json(String title, Class<? extends Record> type) {
        return DesignWriter.json(new DesignSchema(false).root(title, type));
    }

    private ObjectNode root(String title, Class<? extends Record> type) {
        ObjectNode root = NODES.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("$id", "urn:leat:" + Names.ofComponent(type.getSimpleName()) + ":" + DesignReader.FORMAT);
        root.put("title", title);
        root.setAll(record(Shape.of(type), null));
        ObjectNode all = root.putObject("$defs");
        defs.forEach(all::set);
        return root;
    }

    /**
     * A default stands where leaving out says the same, and nowhere else: an editor writes defaults into files, and what is assumed
     * is not known by being written.
     */
    private ObjectNode record(Shape shape, @Nullable String kind) {
        ObjectNode out = NODES.objectNode();
        String about = about(shape.type());
        if (!about.isEmpty()) {
            out.put("description", about);
        }
        sample(out, shape.type());
        out.put("type", "object");
        ObjectNode properties = out.putObject("properties");
        ArrayNode required = NODES.arrayNode();
        if (kind != null) {
            properties.set(
                    "kind", pattern(WaysWritten.expressions(kind, shape.type())).put("description", about));
            required.add("kind");
        }
        for (Shape.Field field : shape.fields()) {
            ObjectNode property = value(field.type(), field.limits());
            String around = field.around();
            if (around != null) {
                ObjectNode number = property;
                property = NODES.objectNode();
                property.putArray("anyOf")
                        .add(number)
                        .add(NODES.objectNode().put("type", "string").put("pattern", WaysWritten.schema(around)));
            }
            if (field.key().equals("name") && field.type() == ValueType.Simple.TEXT) {
                property.put("maxLength", Texts.LONGEST_NAME);
            }
            property.put("description", field.about());
            properties.set(field.key(), property);
            if (field.required()) {
                required.add(field.key());
            } else if (!field.canBeAbsent() && field.type() instanceof ValueType.OfList) {
                property.putArray("default");
            } else if (!field.canBeAbsent() && field.type() instanceof ValueType.OfNames) {
                property.putObject("default");
            }
        }
        out.put("additionalProperties", false);
        if (!parts) {
            if (!required.isEmpty()) {
                out.set("required", required);
            }
            return out;
        }
        properties
                .putObject(Parts.KEY)
                .put("type", "string")
                .put("description", "name of a part in a parts file whose fields are taken; fields beside it win");
        if (!required.isEmpty()) {
            ArrayNode either = out.putArray("anyOf");
            either.addObject().set("required", required);
            either.addObject().putArray("required").add(Parts.KEY);
        }
        return out;
    }

    private ObjectNode value(ValueType type, @Nullable Limits limits) {
        if (type instanceof ValueType.OfList list) {
            ObjectNode out = NODES.objectNode().put("type", "array");
            if (limits != null && limits.items() > 0) {
                out.put("minItems", limits.items());
            }
            out.put("maxItems", list.most());
            out.set("items", value(list.item(), limits));
            if (limits != null && limits.items() > 1) {
                return out;
            }
            ObjectNode oneOrList = NODES.objectNode();
            oneOrList.putArray("anyOf").add(out).add(value(list.item(), limits));
            return oneOrList;
        }
        if (type instanceof ValueType.OfNames names) {
            ObjectNode out = NODES.objectNode().put("type", "object");
            out.set("additionalProperties", value(names.value(), limits));
            return out;
        }
        if (type instanceof ValueType.OfAny) {
            return NODES.objectNode();
        }
        if (type instanceof ValueType.OfQuantity quantity) {
            return ref(quantity(quantity, limits));
        }
        if (type instanceof ValueType.OfWord word) {
            return ref(word(word));
        }
        if (type instanceof ValueType.OfRecord record) {
            return ref(named(record.type(), () -> record(Shape.of(record.type()), null)));
        }
        if (type instanceof ValueType.OfChoice choice) {
            return ref(named(choice.type(), () -> choice(choice)));
        }
        return switch ((ValueType.Simple) type) {
            case WHOLE -> limited(NODES.objectNode().put("type", "integer"), limits);
            case NUMBER -> limited(NODES.objectNode().put("type", "number"), limits);
            case YES_NO -> NODES.objectNode().put("type", "boolean");
            case TEXT -> NODES.objectNode().put("type", "string");
            case DAY ->
                NODES.objectNode()
                        .put("type", "string")
                        .put("format", "date")
                        .put("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
            case PLAIN -> {
                ObjectNode out = NODES.objectNode();
                out.putArray("type").add("string").add("number").add("boolean");
                yield out;
            }
        };
    }

    private String named(Class<?> type, Supplier<ObjectNode> schema) {
        String name = Names.ofComponent(type.getSimpleName());
        if (!defs.containsKey(name)) {
            defs.put(name, NODES.objectNode()); // holds the place while the fields are followed
            defs.put(name, schema.get());
        }
        return name;
    }

    private static ObjectNode ref(String name) {
        return NODES.objectNode().put("$ref", REF + name);
    }

    private ObjectNode choice(ValueType.OfChoice choice) {
        ObjectNode mapping = NODES.objectNode();
        mapping.put("type", "object");
        ObjectNode kind = mapping.putObject("properties").putObject("kind");
        ArrayNode ways = kind.putArray("anyOf");
        ArrayNode words = ways.addObject().putArray("enum");
        choice.kinds().keySet().forEach(words::add);
        choice.kinds().forEach((word, type) -> ways.add(pattern(WaysWritten.expressions(word, type))));
        ArrayNode either = mapping.putArray("anyOf");
        either.addObject().putArray("required").add("kind");
        either.addObject().putArray("required").add(Parts.KEY);
        ArrayNode all = mapping.putArray("allOf");
        choice.kinds().forEach((word, type) -> {
            ObjectNode rule = all.addObject();
            ObjectNode condition = rule.putObject("if");
            condition.putObject("properties").set("kind", pattern(WaysWritten.expressions(word, type)));
            condition.putArray("required").add("kind");
            rule.set("then", ref(named(type, () -> record(Shape.of(type), word))));
        });
        if (choice.plain() == null) {
            mapping.put("description", about(choice.type()));
            sample(mapping, choice.type());
            return mapping;
        }
        Shape.Field plain = Shape.of(choice.plain()).fields().get(0);
        ObjectNode out = NODES.objectNode().put("description", about(choice.type()));
        sample(out, choice.type());
        out.putObject("if").put("type", "object");
        out.set("then", mapping);
        out.set("else", value(plain.type(), plain.limits()));
        return out;
    }

    private String word(ValueType.OfWord word) {
        return named(word.type(), () -> {
            ObjectNode out = NODES.objectNode().put("description", about(word.type()));
            ArrayNode either = out.putArray("anyOf");
            ArrayNode words = either.addObject().putArray("enum");
            word.words().keySet().forEach(words::add);
            List<String> ways = new ArrayList<>();
            word.words()
                    .forEach((name, constant) ->
                            ways.addAll(WaysWritten.expressions(name, ValueType.element((Enum<?>) constant))));
            either.add(pattern(ways));
            return out;
        });
    }

    private static ObjectNode pattern(List<String> ways) {
        return NODES.objectNode().put("type", "string").put("pattern", "^(" + String.join("|", ways) + ")$");
    }

    /** A quantity's text; a kind that cannot be negative refuses the sign. */
    private String quantity(ValueType.OfQuantity type, @Nullable Limits limits) {
        QuantityKind kind = type.kind();
        boolean unsigned =
                kind != QuantityKind.TEMPERATURE && limits != null && (limits.atLeast() >= 0 || limits.above() >= 0);
        String name = kind.label().replace(' ', '-')
                + (unsigned ? "-not-negative" : "")
                + (type.measured() ? "-with-tolerance" : "");
        defs.computeIfAbsent("quantity-" + name, n -> {
            ObjectNode out = NODES.objectNode();
            out.put("description", kind.label() + SchemaText.units(kind) + (type.measured() ? ", ± tolerance" : ""));
            ObjectNode text = kind == QuantityKind.RATIO ? NODES.objectNode() : out;
            text.put("type", "string").put("pattern", SchemaText.pattern(kind, unsigned, type.measured()));
            if (kind == QuantityKind.RATIO) {
                ObjectNode number = NODES.objectNode().put("type", "number");
                if (unsigned) {
                    number.put("minimum", 0);
                }
                out.putArray("anyOf").addAll(List.of(number, text));
            }
            return out;
        });
        return "quantity-" + name;
    }

    private static ObjectNode limited(ObjectNode out, @Nullable Limits limits) {
        if (limits != null) {
            put(out, "minimum", limits.atLeast());
            put(out, "exclusiveMinimum", limits.above());
            put(out, "maximum", limits.atMost());
        }
        return out;
    }

    private static void put(ObjectNode out, String key, double limit) {
        if (limit == Math.rint(limit) && Math.abs(limit) < 1e15) {
            out.put(key, (long) limit);
        } else if (Double.isFinite(limit)) {
            out.put(key, limit);
        }
    }

    private static void sample(ObjectNode out, Class<?> type) {
        Sample sample = type.getAnnotation(Sample.class);
        if (sample != null) {
            out.putArray("examples").add(SchemaText.json(sample.value()));
        }
    }

    static String about(Class<?> type) {
        About about = type.getAnnotation(About.class);
        return about == null ? "" : about.value();
    }
}
