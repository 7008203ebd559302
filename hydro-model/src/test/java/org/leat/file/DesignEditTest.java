package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.design.PolyethyleneGrade;
import org.leat.design.RunnerKind;
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
}
