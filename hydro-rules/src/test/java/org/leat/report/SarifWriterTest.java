package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.pack.BuiltInPack;

class SarifWriterTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static String write(Rulebook rulebook, boolean problemsOnly, Report... reports) throws IOException {
        StringBuilder out = new StringBuilder();
        SarifWriter writer = new SarifWriter(rulebook, out, "0.1.0", problemsOnly);
        for (Report report : reports) {
            writer.add(report);
        }
        writer.end();
        return out.toString();
    }

    @Test
    void every_log_is_valid_by_the_schema_of_the_standard() throws IOException {
        Schema schema = schema();
        for (String log : new String[] {
            write(MadeReports.rulebook(), false),
            write(MadeReports.rulebook(), false, MadeReports.report(), MadeReports.unreadable(), MadeReports.hostile()),
            write(MadeReports.changedRulebook(), true, MadeReports.report())
        }) {
            assertThat(schema.validate(log, InputFormat.JSON)).isEmpty();
        }
    }

    @Test
    void a_rule_of_ours_leads_to_its_page_where_the_release_says_where_pages_are_and_nowhere_else() throws IOException {
        Rulebook ours = Checker.of(List.of(new BuiltInPack())).rulebook();
        JsonNode rules =
                MAPPER.readTree(log(ours, "https://pages.invalid/leat/")).at("/runs/0/tool/driver/rules");
        assertThat(rules).hasSizeGreaterThan(100);
        for (JsonNode rule : rules) {
            String id = rule.get("id").asText();
            if (id.equals(SarifRules.READABLE)) {
                assertThat(rule.has("helpUri")).isFalse();
            } else {
                assertThat(rule.get("helpUri").asText())
                        .isEqualTo("https://pages.invalid/leat/docs/rules/" + id + ".html");
                assertThat(Path.of("../docs/rules/" + id + ".md")).exists();
            }
        }
        assertThat(schema().validate(log(ours, "https://pages.invalid/leat/"), InputFormat.JSON))
                .isEmpty();
        assertThat(log(ours, null)).doesNotContain("helpUri");
        assertThat(log(MadeReports.rulebook(), "https://pages.invalid/leat/")).doesNotContain("helpUri");
    }

    private static String log(Rulebook rulebook, @Nullable String pages) throws IOException {
        StringBuilder out = new StringBuilder();
        new SarifWriter(rulebook, out, "0.1.0", false, null, pages).end();
        return out.toString();
    }

    @Test
    void the_schema_would_find_a_wrong_kind() throws IOException {
        String wrong =
                write(MadeReports.rulebook(), false, MadeReports.report()).replace("\"open\"", "\"opened\"");
        assertThat(schema().validate(wrong, InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void what_is_no_failure_has_the_level_none_and_every_result_its_rule_and_place() throws IOException {
        JsonNode run = MAPPER.readTree(
                        write(MadeReports.rulebook(), false, MadeReports.report(), MadeReports.unreadable()))
                .at("/runs/0");
        assertThat(run.get("columnKind").asText()).isEqualTo("unicodeCodePoints");
        assertThat(run.get("results")).isNotEmpty();
        for (JsonNode result : run.get("results")) {
            boolean fail = result.get("kind").asText().equals("fail");
            assertThat(result.get("level").asText().equals("none")).isEqualTo(!fail);
            JsonNode rule =
                    run.at("/tool/driver/rules/" + result.get("ruleIndex").asInt());
            assertThat(rule.get("id").asText()).isEqualTo(result.get("ruleId").asText());
            assertThat(result.at("/locations/0/physicalLocation/region/startLine")
                            .asInt())
                    .isPositive();
            assertThat(result.get("fingerprints")).isNotEmpty();
            assertThat(result.at("/message/text").asText().replace("{{", "")).doesNotContain("{");
        }
    }

    @Test
    void the_numbered_text_filled_with_the_arguments_is_the_message() throws IOException {
        JsonNode run = MAPPER.readTree(write(MadeReports.rulebook(), false, MadeReports.report()))
                .at("/runs/0");
        for (JsonNode result : run.get("results")) {
            JsonNode rule =
                    run.at("/tool/driver/rules/" + result.get("ruleIndex").asInt());
            String text = rule.get("messageStrings")
                    .get(result.at("/message/id").asText())
                    .get("text")
                    .asText();
            JsonNode arguments = result.at("/message/arguments");
            for (int i = 0; i < arguments.size(); i++) {
                text = text.replace("{" + i + "}", arguments.get(i).asText());
            }
            assertThat(result.at("/message/text").asText()).startsWith(text);
        }
    }

    @Test
    void rules_are_listed_sorted_with_their_limits() throws IOException {
        JsonNode rules = MAPPER.readTree(write(MadeReports.rulebook(), false)).at("/runs/0/tool/driver/rules");
        assertThat(rules.findValuesAsText("id")).isSorted().contains("barrel/overflow", "file/readable");
        assertThat(rules.at("/0/defaultConfiguration/parameters/brim").asText()).isEqualTo("0.9 m");
    }

    @Test
    void a_changed_limit_is_told_as_an_override() throws IOException {
        JsonNode override = MAPPER.readTree(write(MadeReports.changedRulebook(), false))
                .at("/runs/0/invocations/0/ruleConfigurationOverrides/0");
        assertThat(override.at("/configuration/parameters/brim").asText()).isEqualTo("0.8 m");
        assertThat(override.at("/configuration/level").asText()).isEqualTo("warning");
    }

    @Test
    void files_are_named_by_relative_encoded_uris() throws IOException {
        String log = write(MadeReports.rulebook(), false, MadeReports.report());
        assertThat(MAPPER.readTree(log).at("/runs/0/artifacts/0/location/uri").asText())
                .isEqualTo("dir%20with%20blank/%C3%A4:b.yaml");
        assertThat(SarifUri.of("./a:b.yaml")).isEqualTo("a%3Ab.yaml");
        assertThat(SarifUri.of("/somewhere/else/plant.yaml")).isEqualTo("plant.yaml");
        assertThat(SarifUri.of("100% sure.yaml")).isEqualTo("100%25%20sure.yaml");
    }

    @Test
    void problems_only_leaves_passes_out_and_changes_no_other_result() throws IOException {
        JsonNode few = MAPPER.readTree(write(MadeReports.rulebook(), true, MadeReports.report()))
                .at("/runs/0/results");
        assertThat(few).extracting(result -> result.get("kind").asText()).containsExactly("fail", "fail", "open");
    }

    /** {@return what the schema of the standard finds wrong in a log} */
    static List<String> schemaComplaints(String log) throws IOException {
        return schema().validate(log, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    private static Schema schema() throws IOException {
        JsonNode schema = MAPPER.readTree(SarifWriterTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json"));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(schema);
    }
}
