package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.file.DesignEdit;
import org.leat.file.DesignReader;
import org.leat.file.Position;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.report.SarifWriter.SarifCall;

/** Logs keep what the SARIF 2.1.0 text demands beyond its schema, and the checks would find it if they did not. */
class SarifStandardTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Path DESIGNS = Path.of("..", "hydro-examples", "designs");

    private static JsonNode log(boolean problemsOnly, Path... files) throws IOException {
        Checker checker = Checker.of(List.of(new BuiltInPack()));
        StringBuilder out = new StringBuilder();
        SarifCall call = new SarifCall(List.of("check", "--also=text=/elsewhere/private/report.txt"), () -> 1);
        SarifWriter writer = new SarifWriter(checker.rulebook(), out, "0.1.0", problemsOnly, call);
        for (Path file : files) {
            Reading reading = DesignReader.read(file);
            writer.add(checker.check(reading), reading);
        }
        writer.broken("what a plant.yaml", "Boom");
        writer.end();
        return MAPPER.readTree(out.toString());
    }

    private static Path[] demos() throws IOException {
        try (Stream<Path> files = Files.list(DESIGNS)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toArray(Path[]::new);
        }
    }

    @Test
    void the_logs_of_all_demos_are_valid_by_schema_and_by_the_text_of_the_standard() throws IOException {
        for (boolean problemsOnly : new boolean[] {false, true}) {
            JsonNode log = log(problemsOnly, demos());
            assertThat(SarifWriterTest.schemaComplaints(log.toString())).isEmpty();
            assertThat(SarifStandard.complaints(log)).isEmpty();
        }
    }

    @Test
    void fixes_carry_out_what_they_say_in_the_unmodified_file() throws IOException {
        int tried = 0;
        for (Path file : demos()) {
            String text = Files.readString(file);
            for (JsonNode result : log(true, file).at("/runs/0/results")) {
                for (JsonNode fix : result.path("fixes")) {
                    List<DesignEdit> edits = new ArrayList<>();
                    for (JsonNode r : fix.at("/artifactChanges/0/replacements")) {
                        JsonNode at = r.get("deletedRegion");
                        edits.add(new DesignEdit(
                                new Position(
                                        "x",
                                        at.get("startLine").asInt(),
                                        at.get("startColumn").asInt(),
                                        at.get("endLine").asInt(),
                                        at.get("endColumn").asInt()),
                                r.at("/insertedContent/text").asText()));
                    }
                    Reading after = DesignReader.read(DesignEdit.apply(text, edits), file.toString());
                    assertThat(after.problems()).isEmpty();
                    String fingerprint =
                            result.at("/fingerprints/designRuleAndPath~1v1").asText();
                    Checker checker = Checker.of(List.of(new BuiltInPack()));
                    assertThat(checker.check(after).findings())
                            .as(file + " " + fingerprint + " " + fix)
                            .noneMatch(f -> f.outcome().kind().word().equals("fail")
                                    && fingerprint.equals(
                                            SarifFingerprint.of(after.design().name(), f.stable())));
                    tried++;
                }
            }
        }
        assertThat(tried).isPositive();
    }

    @Test
    void places_spoken_of_are_related_and_folders_of_the_machine_are_not_told() throws IOException {
        JsonNode log = log(false, demos());
        assertThat(log.findValues("relatedLocations")).isNotEmpty();
        assertThat(log.at("/runs/0/invocations/0/arguments/1").asText()).isEqualTo("--also=text=[REDACTED]/report.txt");
        assertThat(log.at("/runs/0/invocations/0/exitCode").asInt()).isEqualTo(1);
        assertThat(log.toString()).doesNotContain(Path.of("").toAbsolutePath().toString(), "private");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /results/0                                               | ruleIndex    | 0            | 3.27.6
        /results/0                                               | ruleId       | 'a/b'        | 3.27.6
        /results/0                                               | kind         | 'fine'       | 3.27.9
        /results/0                                               | level        | 'nothing'    | 3.27.10
        /results/0/message                                       | id           | 'other'      | 3.11.7
        /results/0/message                                       | arguments    | []           | 3.11.11
        /results/0/message                                       | text         | ''           | 3.11.8
        /results/0                                               | fingerprints | {}           | 3.27.16
        /results/0                                               | locations    | []           | 3.27.12
        /results/0                                               | baselineState| 'new'        | 3.27.24
        /results/0                                               | suppressions | gone         | 3.27.23
        /results/0/locations/0/physicalLocation/artifactLocation | index        | 1            | 3.4.5
        /results/0/locations/0/physicalLocation/artifactLocation | uri          | 'a b'        | 3.10.1
        /results/0/locations/0/physicalLocation/artifactLocation | uri          | './b'        | 3.10.1
        /results/0/locations/0/physicalLocation/artifactLocation | uri          | '/b'         | 3.4.4
        /results/0/locations/0/physicalLocation/region           | endLine      | 1            | 3.30.7
        /results/0/locations/0/physicalLocation/region           | startLine    | 0            | 3.30.5
        /results/0/locations/0/logicalLocations/0                | name         | 'other'      | 3.33.5
        /tool/driver/rules/1                                     | id           | 'alternator/current' | 3.27.6
        /tool/driver/rules/0                                     | helpUri      | 'x'          | 3.49.12
        /invocations/0                                           | executionSuccessful | true  | 3.20.14
        /                                                        | redactionTokens | []        | 3.14.28
        """)
    void a_log_that_breaks_a_rule_of_the_standard_is_found_out(String where, String field, String value, String section)
            throws IOException {
        JsonNode log = log(true, demos());
        // the first failure with a message of its own serves as the example
        ArrayNode results = (ArrayNode) log.at("/runs/0/results");
        while (results.get(0).at("/message/arguments").isEmpty()
                || results.get(0)
                                .at("/locations/0/physicalLocation/region/startLine")
                                .asInt()
                        < 2
                || !results.get(0).path("kind").asText().equals("fail")) {
            results.remove(0);
        }
        assertThat(SarifStandard.complaints(log)).isEmpty();
        ObjectNode node = (ObjectNode) log.at("/runs/0" + (where.equals("/") ? "" : where));
        String json = value.matches("\\d+|true|\\[]|\\{}") ? value : "\"" + value + "\"";
        if (value.equals("gone")) {
            node.remove(field);
        } else {
            node.set(field, MAPPER.readTree(json.equals("\"nothing\"") ? "\"none\"" : json));
        }
        assertThat(SarifStandard.complaints(log)).anyMatch(c -> c.startsWith("§" + section + ":"));
    }

    @Test
    void two_replacements_of_one_value_are_found_out() throws IOException {
        JsonNode log = log(true, demos());
        for (JsonNode result : log.at("/runs/0/results")) {
            if (result.has("fixes")) {
                ArrayNode replacements = (ArrayNode) result.at("/fixes/0/artifactChanges/0/replacements");
                replacements.add(replacements.get(0).deepCopy());
                assertThat(SarifStandard.complaints(log)).anyMatch(c -> c.startsWith("§3.57.3:"));
                return;
            }
        }
        throw new AssertionError("no demo has a fix");
    }
}
