package org.leat.rulefile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** The JSON Schema (2020-12) of rule files. It knows fields; names, units and types in expressions only the reader knows. */
public final class RuleFileSchema {

    private static final List<List<String>> RULE = List.of(
            List.of("id", "two parts, the first your own: hill/standing-pressure"),
            List.of("level", "how much a failure matters"),
            List.of("title", "what is judged, in a few words"),
            List.of("why", "what goes wrong, in one to three sentences"),
            List.of("source", "standard and clause, handbook and page, or \"common practice\"; one or a list"),
            List.of("judged", "the case that is judged, in words"),
            List.of("computed", "what is computed, in words; the expressions themselves if left out"),
            List.of("limits", "limits that settings may change, read as limit.name in expressions"),
            List.of("at", "path of the element answered for, as in /battery; the whole design if left out"),
            List.of("for-each", "expression: a list of things to judge one after the other, each read as each"),
            List.of("when", "expression: whether the rule applies"),
            List.of("value", "expression: a quantity that is compared"),
            List.of("at-most", "expression: the most that value may be"),
            List.of("at-least", "expression: the least that value may be"),
            List.of("must", "expression: what must hold, where no value is compared"),
            List.of("show", "expressions by name, for placeholders of the texts"),
            List.of("passes", "text of a pass, with placeholders as in {value}"),
            List.of("fails", "text of a failure, with placeholders as in {value}, {limit:bar} and {at}"));

    private RuleFileSchema() {}

    /** {@return the fields of a rule, in order} */
    static List<String> fields() {
        return RULE.stream().map(field -> field.get(0)).toList();
    }

    /** {@return the schema as JSON text} */
    public static String json() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Rule file, format " + RuleFile.FORMAT);
        ObjectNode properties = mapping(root);
        properties.putObject("format").put("const", RuleFile.FORMAT).put("description", "version of the file format");
        text(properties, "name", "what the pack is called");
        ObjectNode rules = properties.putObject("rules");
        rules.put("type", "array").put("minItems", 1).put("maxItems", 200).put("description", "the rules");
        root.putArray("required").add("format").add("name").add("rules");
        rule(rules.putObject("items"));
        try {
            DefaultIndenter indent = new DefaultIndenter("  ", "\n");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
            printer.indentObjectsWith(indent);
            printer.indentArraysWith(indent);
            return new ObjectMapper().writer(printer).writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ObjectNode mapping(ObjectNode node) {
        node.put("type", "object").put("additionalProperties", false);
        return node.putObject("properties");
    }

    private static ObjectNode text(ObjectNode properties, String name, String description) {
        return properties
                .putObject(name)
                .put("type", "string")
                .put("minLength", 1)
                .put("description", description);
    }

    private static void rule(ObjectNode rule) {
        ObjectNode properties = mapping(rule);
        for (List<String> field : RULE) {
            String name = field.get(0);
            switch (name) {
                case "limits" -> limits(properties.putObject(name).put("description", field.get(1)));
                case "show" ->
                    properties
                            .putObject(name)
                            .put("type", "object")
                            .put("description", field.get(1))
                            .putObject("additionalProperties")
                            .put("type", "string");
                case "source" -> {
                    ObjectNode source = properties.putObject(name).put("description", field.get(1));
                    source.putArray("type").add("string").add("array");
                    source.putObject("items").put("type", "string");
                }
                default -> text(properties, name, field.get(1));
            }
        }
        ((ObjectNode) properties.get("level"))
                .putArray("enum")
                .add("error")
                .add("warning")
                .add("note");
        ((ObjectNode) properties.get("id")).put("pattern", "^[a-z]+(-[a-z]+)*/[a-z0-9]+(-[a-z0-9]+)*$");
        RuleReader.REQUIRED.forEach(rule.putArray("required")::add);
    }

    private static void limits(ObjectNode limits) {
        limits.put("type", "object");
        limits.putObject("propertyNames").put("pattern", "^[a-z][a-zA-Z0-9]*$");
        ObjectNode limit = limits.putObject("additionalProperties");
        ObjectNode properties = mapping(limit);
        properties
                .putObject("value")
                .put("description", "with its unit, as in 4 bar; a plain number for a ratio")
                .putArray("type")
                .add("string")
                .add("number");
        text(properties, "source", "standard and clause, handbook and page, or \"common practice\"");
        limit.putArray("required").add("value").add("source");
    }
}
