package org.leat.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The failing examples of the built-in rules, from a file for each component in which a line
 * {@code # rule/id} begins each. */
final class Examples {

    private Examples() {}

    /** {@return the examples by rule id} */
    static Map<String, String> read(List<String> components) {
        Map<String, String> examples = new LinkedHashMap<>();
        for (String component : components) {
            split(text("examples/" + component + ".md"), examples);
        }
        return Collections.unmodifiableMap(examples);
    }

    private static String text(String file) {
        try (InputStream in = Examples.class.getResourceAsStream(file)) {
            // a component whose rules have no examples yet
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void split(String text, Map<String, String> examples) {
        StringBuilder example = new StringBuilder();
        String rule = "";
        for (String line : text.split("\n", -1)) {
            if (line.matches("# [a-z-]+/[a-z0-9-]+")) {
                keep(examples, rule, example);
                rule = line.substring(2);
            } else {
                example.append(line).append('\n');
            }
        }
        keep(examples, rule, example);
    }

    private static void keep(Map<String, String> examples, String rule, StringBuilder example) {
        if (!rule.isEmpty()) {
            examples.put(rule, example.toString().strip());
        }
        example.setLength(0);
    }
}
