package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.report.TextWriter.Colours;

class TextWriterTest {

    private static String write(Rulebook rulebook, Colours colours, Report... reports) throws IOException {
        StringBuilder out = new StringBuilder();
        TextWriter writer = new TextWriter(rulebook, out, colours);
        for (Report report : reports) {
            writer.add(report);
        }
        writer.end();
        return out.toString();
    }

    @Test
    void a_failure_tells_place_value_limit_margin_source_way_out_and_what_it_rests_on() throws IOException {
        String text = write(MadeReports.rulebook(), Colours.NONE, MadeReports.report());
        assertThat(text).contains("""
                        ERROR barrel/overflow  at dir with blank/ä:b.yaml:4:13  barrel[east].height
                            east spills at 30 mm: 1.2 m, at most 0.9 m, 33 % beyond.
                            value 1.2 m, limit at most 0.9 m, 33 % beyond (raining)
                            source common practice
                            way out: A barrel of 150 cm. (\u221212 W)
                            rests on what was assumed of weather
                        """);
        assertThat(text.indexOf("ERROR")).isLessThan(text.indexOf("NOTE"));
    }

    @Test
    void what_was_not_judged_and_what_is_tight_follow_and_the_counts_come_last() throws IOException {
        String text = write(MadeReports.rulebook(), Colours.NONE, MadeReports.report(), MadeReports.unreadable());
        assertThat(text)
                .contains("Could not be judged\n  barrel/overflow", "Tightest of what holds\n  barrel/overflow");
        assertThat(text.replace('\n', ' ').strip())
                .endsWith("2 files checked, 1 not readable as a design, 1 error, 0 warnings, 1 note,"
                        + " 1 passed, 1 not judged.");
    }

    @Test
    void the_caution_is_printed_once() throws IOException {
        String text = write(MadeReports.rulebook(), Colours.NONE, MadeReports.report(), MadeReports.report());
        assertThat(text.split("Water under pressure", -1)).hasSize(2);
        assertThat(text).contains("hydrogen").contains("Local codes");
    }

    @Test
    void a_changed_limit_names_who_changed_it() throws IOException {
        assertThat(write(MadeReports.changedRulebook(), Colours.NONE, MadeReports.report()))
                .contains("source limit brim changed by house.yaml:3: splashing", "Changed by settings");
    }

    @Test
    void problems_of_a_file_are_told_with_their_place() throws IOException {
        assertThat(write(MadeReports.rulebook(), Colours.NONE, MadeReports.unreadable()))
                .contains("unreadable  bad.yaml:3:1: ");
    }

    @Test
    void control_characters_of_files_never_reach_the_terminal() throws IOException {
        String text = write(MadeReports.rulebook(), Colours.NONE, MadeReports.hostile());
        assertThat(text.replace("\n", "")).doesNotContainPattern("[\\p{Cntrl}\\u202e]");
        assertThat(text).contains("\\u001B");
    }

    @Test
    void colours_only_add_escape_sequences() throws IOException {
        String plain = write(MadeReports.rulebook(), Colours.NONE, MadeReports.report());
        String coloured = write(MadeReports.rulebook(), Colours.TERMINAL, MadeReports.report());
        assertThat(coloured).isNotEqualTo(plain);
        assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain);
    }
}
