package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;

class ReportSchemaTest {

    private static final Path FILE = Path.of("..", "docs", "report.schema.json");

    private static Schema schema() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(ReportSchema.json());
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema);
    }

    private static String write(Rulebook rulebook, Report... reports) throws IOException {
        StringBuilder out = new StringBuilder();
        JsonWriter writer = new JsonWriter(rulebook, out);
        for (Report report : reports) {
            writer.add(report);
        }
        writer.broken("broken.yaml", "Boom");
        writer.end();
        return out.toString();
    }

    @Test
    void the_schema_in_the_docs_is_the_one_made_from_the_records() throws IOException {
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(FILE, ReportSchema.json());
        }
        assertThat(Files.readString(FILE)).isEqualTo(ReportSchema.json());
    }

    @Test
    void reports_of_the_demos_and_made_ones_are_valid() throws IOException {
        Checker checker = Checker.of(List.of(new BuiltInPack()));
        try (Stream<Path> demos = Files.list(Path.of("..", "hydro-examples", "designs"))) {
            Report[] reports = demos.sorted()
                    .map(file -> checker.check(DesignReader.read(file)))
                    .toArray(Report[]::new);
            assertThat(schema().validate(write(checker.rulebook(), reports), InputFormat.JSON))
                    .isEmpty();
        }
        String made = write(
                MadeReports.changedRulebook(),
                MadeReports.report(),
                MadeReports.unreadable(),
                MadeReports.hostile(),
                MadeStandings.report());
        assertThat(schema().validate(made, InputFormat.JSON)).isEmpty();
        assertThat(made).contains("\"wears a lid\"", "\"baselineState\": \"unchanged\"", "\"endangers\": true");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        "kind": "open"     | "kind": "opened"
        "level": "error"   | "level": "bad"
        "version": 1       | "version": 2
        "line": 4          | "line": "4"
        "summary":         | "sum":
        "readable": true   | "readable": 1
        """)
    void a_report_that_is_not_so_is_found_out(String so, String other) throws IOException {
        String sound = write(MadeReports.rulebook(), MadeReports.report());
        assertThat(schema().validate(sound, InputFormat.JSON)).isEmpty();
        assertThat(sound).contains(so);
        assertThat(schema().validate(sound.replace(so, other), InputFormat.JSON))
                .isNotEmpty();
    }
}
