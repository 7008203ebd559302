package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.leat.check.Report;

class JsonWriterTest {

    private static String write(Report... reports) throws IOException {
        StringBuilder out = new StringBuilder();
        JsonWriter writer = new JsonWriter(MadeReports.rulebook(), out);
        for (Report report : reports) {
            writer.add(report);
        }
        writer.broken("c.yaml", "cause");
        writer.end();
        return out.toString();
    }

    @Test
    void findings_carry_numbers_in_si_and_the_text_beside_them() throws IOException {
        JsonNode root = new ObjectMapper().readTree(write(MadeReports.report()));
        JsonNode first = root.at("/designs/0/findings/0");
        assertThat(root.get("format").asText()).isEqualTo("leat-report");
        assertThat(root.get("version").asInt()).isEqualTo(1);
        assertThat(first.at("/comparison/value").decimalValue()).isEqualByComparingTo("1.2");
        assertThat(first.at("/comparison/margin").decimalValue()).isEqualByComparingTo("-0.333333333");
        assertThat(first.at("/comparison/low").isMissingNode()).isTrue();
        assertThat(first.at("/message/arguments/rain/value").decimalValue()).isEqualByComparingTo("0.03");
        assertThat(first.at("/message/text").asText()).startsWith("east spills");
        assertThat(first.at("/waysOut/0/edits/0/value").asText()).isEqualTo("1.5 m");
    }

    @Test
    void the_summary_counts_and_names_what_broke() throws IOException {
        JsonNode root = new ObjectMapper().readTree(write(MadeReports.report(), MadeReports.unreadable()));
        assertThat(root.at("/summary/errors").asInt()).isEqualTo(1);
        assertThat(root.at("/summary/unreadable").asInt()).isEqualTo(1);
        assertThat(root.at("/summary/broke").asBoolean()).isTrue();
        assertThat(root.at("/notChecked/0/file").asText()).isEqualTo("c.yaml");
        assertThat(root.at("/designs/1/problems").findValuesAsText("kind")).contains("unknown-field", "missing-field");
    }

    @Test
    void lines_end_in_a_line_feed_whatever_the_system() throws IOException {
        assertThat(write(MadeReports.report())).doesNotContain("\r").endsWith("}\n");
    }
}
