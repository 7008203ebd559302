package org.leat.report.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * What a file expects to be found.
 *
 * @param rules whose every finding is listed; empty for whatever needs attention
 * @param findings expected, in no order
 */
record Expectation(List<String> rules, List<Told.Line> findings) {

    /**
     * {@return what a text expects}
     *
     * @throws IllegalArgumentException if it is not of that form
     */
    static Expectation read(String text) {
        Object root = new Load(LoadSettings.builder().build()).loadFromString(text);
        if (!(root instanceof Map<?, ?> map)) {
            throw new IllegalArgumentException("an expectation holds rules and findings");
        }
        List<String> rules = new ArrayList<>();
        for (Object rule : list(map.get("rules"))) {
            rules.add(String.valueOf(rule));
        }
        List<Told.Line> findings = new ArrayList<>();
        for (Object finding : list(map.get("findings"))) {
            Map<String, String> fields = new LinkedHashMap<>();
            if (finding instanceof Map<?, ?> given) {
                given.forEach((name, value) -> fields.put(String.valueOf(name), String.valueOf(value)));
            }
            if (!fields.containsKey("rule") || !fields.containsKey("kind")) {
                throw new IllegalArgumentException("a finding names at least its rule and kind: " + finding);
            }
            findings.add(new Told.Line(fields));
        }
        return new Expectation(List.copyOf(rules), List.copyOf(findings));
    }

    private static List<?> list(@Nullable Object value) {
        return value instanceof List<?> list ? list : List.of();
    }
}
