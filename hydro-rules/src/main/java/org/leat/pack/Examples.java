package org.leat.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.check.Paths;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * The example on a rule's page: the first in the rule's file of examples that fails, told from what the file expects.
 * That the expectation is true is what the tests of the examples hold.
 */
final class Examples {

    private Examples() {}

    /** {@return the examples by rule id} The file of a rule is called as the rule is. */
    static Map<String, String> of(List<String> rules) {
        Map<String, String> examples = new LinkedHashMap<>();
        for (String rule : rules) {
            String page = page(rule, text(rule + ".yaml"));
            if (page != null) {
                examples.put(rule, page);
            }
        }
        return Collections.unmodifiableMap(examples);
    }

    private static String text(String file) {
        try (InputStream in = Examples.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalArgumentException("no examples of a rule in " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * {@return the example in Markdown; null if the file has none that fails}
     *
     * @param text of a rule's file of examples
     */
    static @Nullable String page(String rule, String text) {
        Map<?, ?> file = map(new Load(LoadSettings.builder().build()).loadFromString(text));
        for (Object example : map(file.get("examples")).values()) {
            for (Object finding : list(map(example).get("expect"))) {
                if ("fail".equals(map(map(finding).get(rule)).get("kind"))) {
                    return page(rule, map(example), map(finding));
                }
            }
        }
        return null;
    }

    private static String page(String rule, Map<?, ?> example, Map<?, ?> finding) {
        List<String> lines = new ArrayList<>();
        lines.add(String.valueOf(example.get("why")));
        Map<?, ?> changes = map(example.get("change"));
        if (!changes.isEmpty()) {
            lines.addAll(List.of("", "Changed in a plant that is sound otherwise:", "", "```yaml"));
            changes.forEach((path, value) -> lines.add(Paths.shown(path.toString()) + ": " + value(value)));
            lines.add("```");
        }
        lines.addAll(List.of("", "What the check says of it:", "", "```text"));
        lines.addAll(found(rule, map(finding.get(rule)), finding));
        lines.add("```");
        return String.join("\n", lines);
    }

    private static List<String> found(String rule, Map<?, ?> facts, Map<?, ?> finding) {
        List<String> lines = new ArrayList<>();
        String level = String.valueOf(facts.get("level")).toUpperCase(Locale.ROOT);
        lines.add(level + " " + rule + "  " + Paths.shown(String.valueOf(facts.get("at"))));
        lines.add("    " + finding.get("text"));
        Object during = facts.get("case");
        if (facts.containsKey("value")) {
            lines.add("    value " + facts.get("value") + ", limit " + facts.get("limit")
                    + (during == null ? "" : " (" + during + ")"));
        } else if (during != null) {
            lines.add("    case " + during);
        }
        for (Object way : list(finding.get("ways-out"))) {
            Object watts = map(way).get("watts");
            lines.add("    way out: " + map(way).get("text") + (watts == null ? "" : " (" + watts + ")"));
        }
        return lines;
    }

    /** A value as a design file holds it. */
    private static String value(@Nullable Object value) {
        if (value instanceof Map<?, ?> fields) {
            List<String> told = new ArrayList<>();
            fields.forEach((name, field) -> told.add(name + ": " + value(field)));
            return "{ " + String.join(", ", told) + " }";
        }
        if (value instanceof List<?> items) {
            return "[ " + String.join(", ", items.stream().map(Examples::value).toList()) + " ]";
        }
        return value == null ? "not stated" : value.toString();
    }

    private static Map<?, ?> map(@Nullable Object value) {
        return value instanceof Map<?, ?> map ? map : Map.of();
    }

    private static List<?> list(@Nullable Object value) {
        return value instanceof List<?> list ? list : List.of();
    }
}
