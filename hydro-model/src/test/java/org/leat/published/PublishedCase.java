package org.leat.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * One value from outside: its inputs, what is expected, how closely, and who published it. Read from the data files
 * under {@code /published}; a test class binds each family of cases (the id without its last part) to the law that must
 * reproduce it.
 */
public record PublishedCase(JsonNode json) {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path OURS = Path.of("target", "published-values");
    private static final Map<String, Double> TOLD = new ConcurrentHashMap<>();

    /** {@return the cases of one file, as {@code hydraulics-friction}} */
    public static Stream<PublishedCase> of(String file) {
        try (InputStream in = PublishedCase.class.getResourceAsStream("/published/" + file + ".json")) {
            List<PublishedCase> cases = new ArrayList<>();
            JSON.readTree(in).forEach(node -> cases.add(new PublishedCase(node)));
            return cases.stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String id() {
        return json.get("id").asText();
    }

    /** {@return the id without its last part: {@code cb} of {@code cb-12}} */
    public String family() {
        return id().substring(0, id().lastIndexOf('-'));
    }

    public String source() {
        return json.get("source").asText();
    }

    public boolean has(String input) {
        return json.get("inputs").has(input);
    }

    /** {@return the number given for an input, in the unit of the file} */
    public double in(String input) {
        return node(input).asDouble();
    }

    public String text(String input) {
        return node(input).asText();
    }

    /** {@return a list of numbers given for an input} */
    public double[] list(String input) {
        JsonNode values = node(input);
        double[] out = new double[values.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = values.get(i).asDouble();
        }
        return out;
    }

    /** {@return the raw value of an input, for tables} */
    public JsonNode node(String input) {
        JsonNode given = json.get("inputs").get(input);
        if (given == null) {
            throw new AssertionError(id() + " has no input " + input + ", only " + json.get("inputs"));
        }
        return given.get("value");
    }

    public double expected() {
        return expected("value");
    }

    public double expected(String name) {
        return json.get("expected").get(name).get("value").asDouble();
    }

    /** Holds the case's only expected value against ours, within the tolerance of its file. */
    public void assertMatches(double ours) {
        assertMatches("value", ours);
    }

    /** Holds one of several expected values against ours, within the tolerance of its file. */
    public void assertMatches(String name, double ours) {
        tell(name, ours);
        JsonNode tolerance = json.get("tolerance");
        double by = tolerance.get("value").asDouble();
        double band = tolerance.get("kind").asText().equals("relative") ? by * Math.abs(expected(name)) : by;
        assertThat(ours)
                .as("%s %s: %s [%s]", id(), name, json.get("what").asText(), source())
                .isCloseTo(expected(name), within(band));
    }

    /**
     * Writes down what is ours, so that the trust page can show it beside what is expected: of several tests that hold the same value
     * the one farther off, in whatever order they run.
     */
    public void tell(String name, double ours) {
        double expected = json.get("expected").get(name).get("value").asDouble();
        double told =
                TOLD.merge(id() + "." + name, ours, (a, b) -> Math.abs(a - expected) >= Math.abs(b - expected) ? a : b);
        try {
            Files.createDirectories(OURS);
            Files.writeString(OURS.resolve((id() + "." + name).replace('/', ' ')), Double.toString(told));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return id() + ": " + json.get("what").asText();
    }
}
