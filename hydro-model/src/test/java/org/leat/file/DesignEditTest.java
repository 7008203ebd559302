package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.design.Design;
import org.leat.design.InsulationClass;
import org.leat.design.PolyethyleneGrade;
import org.leat.design.RunnerKind;
import org.leat.design.Section;
import org.leat.quantity.Si;

class DesignEditTest {

    private static Reading read(String text) {
        return DesignReader.read(text, "f");
    }

    @Test
    void one_value_is_replaced_and_everything_else_kept() {
        String text = SampleFiles.alderBeck();
        DesignEdit edit = DesignEdit.of(read(text), "/runner/pitch-diameter", Si.quantity(125, "mm", Length.class));
        assertThat(edit).isNotNull();
        assertThat(DesignEdit.apply(text, List.of(edit))).isEqualTo(text.replace("140 mm", "125 mm"));
    }

    @Test
    void several_edits_in_one_line_and_across_line_ends_of_either_kind_find_their_place() {
        String text = SampleFiles.alderBeck().replace("\n", "\r\n").replace("bothy", "\uD83D\uDCA7");
        Reading reading = read(text);
        List<DesignEdit> edits = List.of(
                Objects.requireNonNull(DesignEdit.of(reading, "/loads[lights]/count", 12)),
                Objects.requireNonNull(DesignEdit.of(reading, "/name", "12")),
                Objects.requireNonNull(DesignEdit.of(reading, "/loads[lights]/hours-per-day", 2.5)),
                Objects.requireNonNull(DesignEdit.of(reading, "/runner/kind", RunnerKind.PELTON)),
                Objects.requireNonNull(
                        DesignEdit.of(reading, "/penstock/sections[run]/pipe/material", PolyethyleneGrade.PE80)));
        String edited = DesignEdit.apply(text, edits);
        assertThat(edited)
                .contains("name: \"12\"\r\n")
                .contains("hours-per-day: 2.5, count: 12 }\r\n")
                .contains("kind: pelton\r\n");
        Reading again = read(edited);
        assertThat(again.problems()).isEmpty();
        assertThat(again.design().name()).isEqualTo("12");
        assertThat(edited.lines().count()).isEqualTo(text.lines().count());
    }

    @Test
    void a_value_in_quotation_marks_stays_in_them_so_that_json_stays_json() {
        String json = DesignWriter.json(read(SampleFiles.alderBeck()).design());
        Reading reading = read(json);
        DesignEdit edit = DesignEdit.of(reading, "/runner/pitch-diameter", Si.quantity(125, "mm", Length.class));
        assertThat(DesignEdit.apply(json, List.of(edit))).contains("\"pitch-diameter\" : \"125 mm\"");
    }

    @Test
    void what_is_in_no_file_or_no_plain_value_cannot_be_edited() {
        Reading reading = read(SampleFiles.alderBeck().replace("notes: \"plant", "notes: |\n  lines\n#"));
        assertThat(reading.problems()).isEmpty();
        assertThat(DesignEdit.of(reading, "/runner/mass", 1)).isNull();
        assertThat(DesignEdit.of(reading, "/runner", 1)).isNull();
        assertThat(DesignEdit.of(reading, "/notes", "x")).isNull();
    }

    private static String set(String text, String path, Object value) {
        Reading before = read(text);
        assertThat(before.problems()).isEmpty();
        DesignEdit edit = Objects.requireNonNull(DesignEdit.setting(before, path, value));
        String edited = DesignEdit.apply(text, List.of(edit));
        assertThat(read(edited).problems()).isEmpty();
        return edited;
    }

    private static Stream<String> yamlAndJson() {
        String yaml = SampleFiles.alderBeck();
        return Stream.of(
                yaml, yaml.replace("\n", "\r\n"), DesignWriter.json(read(yaml).design()));
    }

    @ParameterizedTest
    @MethodSource("yamlAndJson")
    void a_list_takes_the_place_of_a_list_of_any_layout(String text) {
        List<Quantity<Length>> two = List.of(Si.quantity(7, "mm", Length.class), Si.quantity(9.5, "mm", Length.class));
        Design after = read(set(text, "/nozzles/open", two)).design();
        assertThat(after.nozzles().open().toString()).isEqualTo("[7 mm, 9.5 mm]");
        Design blocks = read(set(
                        text.replaceFirst("\\n( *)open: \\[[^\\]]*]", "\n$1open: # both\n$1  - 8 mm\n$1  - 8 mm"),
                        "/nozzles/open",
                        two))
                .design();
        assertThat(blocks).isEqualTo(after);
    }

    @ParameterizedTest
    @MethodSource("yamlAndJson")
    void a_field_that_is_not_there_is_written_behind_the_others_of_its_element(String text) {
        assertThat(read(text).design().alternator().insulationClass()).isNull();
        Design after = read(set(text, "/alternator/insulation-class", InsulationClass.F))
                .design();
        assertThat(after.alternator().insulationClass()).isEqualTo(InsulationClass.F);
        Design inBrackets = read(set(text, "/cables[0]/rated-voltage", Si.quantity(450, "V", ElectricPotential.class)))
                .design();
        assertThat(inBrackets.cables().get(0).ratedVoltage().toString()).startsWith("450");
    }

    @ParameterizedTest
    @MethodSource("yamlAndJson")
    void a_whole_element_of_several_kinds_is_written_with_its_kind(String text) {
        Design before = read(text).design();
        Section first = before.penstock().sections().get(0);
        String edited = set(text, "/penstock/sections[" + first.name() + "]/pipe", first.pipe());
        assertThat(read(edited).design()).isEqualTo(before);
        String whole = set(text, "/runner", before.runner());
        assertThat(read(whole).design()).isEqualTo(before);
    }

    @Test
    void what_stands_in_a_block_of_lines_or_below_nothing_is_not_written() {
        Reading reading = read(SampleFiles.alderBeck().replace("notes: \"plant", "notes: |\n  lines\n#"));
        assertThat(DesignEdit.setting(reading, "/notes", "x")).isNull();
        assertThat(DesignEdit.setting(reading, "/runner/hub/bolts", 4)).isNull();
    }
}
