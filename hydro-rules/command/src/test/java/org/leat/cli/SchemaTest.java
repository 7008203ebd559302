package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The schemas that editors are led to. */
class SchemaTest {

    private static String schema(String... options) {
        StringWriter out = new StringWriter();
        List<String> call = new ArrayList<>(List.of("schema"));
        call.addAll(List.of(options));
        int code = Leat.run(call.toArray(String[]::new), new PrintWriter(out), new PrintWriter(out));
        assertThat(code).as(out.toString()).isZero();
        return out.toString();
    }

    @ParameterizedTest
    @CsvSource({
        "--of-survey, survey",
        "--of-gauging, gauging",
        "--of-bench, bench",
        "--of-readings, readings",
        "--of-log, log",
    })
    void the_schemas_in_the_docs_are_those_that_the_program_prints(String option, String name) throws Exception {
        Path docs = Path.of("..", "..", "docs", name + ".schema.json");
        String schema = schema(option);
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(docs, schema);
        }
        assertThat(schema).isEqualTo(Files.readString(docs));
    }

    @ParameterizedTest
    @CsvSource({
        "--of-survey",
        "--of-gauging",
        "--of-bench",
        "--of-readings",
        "--of-log",
        "--of-prices",
        "--of-settings",
        "--of-report"
    })
    void every_schema_has_a_name_of_its_own_and_a_title(String option) throws Exception {
        JsonNode schema = new ObjectMapper().readTree(schema(option));
        JsonNode design = new ObjectMapper().readTree(schema());
        assertThat(schema.get("$id").asText())
                .startsWith("urn:leat:")
                .isNotEqualTo(design.get("$id").asText());
        assertThat(schema.get("title").asText())
                .isNotEmpty()
                .isNotEqualTo(design.get("title").asText());
    }

    @Test
    void a_default_stands_only_where_leaving_out_says_the_same() throws Exception {
        JsonNode schema = new ObjectMapper().readTree(schema());
        assertThat(schema.at("/properties/loads/default").isArray()).isTrue();
        // nothing said of fuses is not the same as no fuses
        assertThat(schema.at("/properties/protection").has("default")).isFalse();
        // what is assumed is not known by an editor's writing it
        assertThat(schema.findValues("default")).isNotEmpty().allMatch(value -> value.isEmpty());
    }
}
