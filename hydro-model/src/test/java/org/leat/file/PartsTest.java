package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.quantity.Si;

class PartsTest {

    private static final String BANK =
            "bank:\n  chemistry: lithium-iron-phosphate\n  cells-in-series: 8\n  capacity: 280 Ah\n";

    @TempDir
    Path folder;

    private Path plants;

    @BeforeEach
    void a_folder_of_plants() throws IOException {
        plants = Files.createDirectory(folder.resolve("plants"));
    }

    /** The sound file with its battery taken from a part. */
    private static String taking(String parts, String battery) {
        String text = SampleFiles.alderBeck().replace("name: Alder", "parts: [" + parts + "]\nname: Alder");
        int from = text.indexOf("battery:\n");
        return text.substring(0, from) + "battery:\n" + battery + text.substring(text.indexOf("inverter:"));
    }

    private Reading read(String text, String... partsFiles) throws IOException {
        for (int i = 0; i < partsFiles.length; i += 2) {
            Path file = plants.resolve(partsFiles[i]);
            Files.createDirectories(file.getParent());
            Files.writeString(file, partsFiles[i + 1]);
        }
        Path file = plants.resolve("plant.yaml");
        Files.writeString(file, text);
        return DesignReader.read(file);
    }

    @Test
    void fields_come_from_the_part_and_own_fields_win() throws IOException {
        Reading reading = read(taking("lib/banks.yaml", "  part: bank\n  capacity: 100 Ah\n"), "lib/banks.yaml", BANK);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.design().battery().cellsInSeries()).isEqualTo(8);
        assertThat(Si.of(reading.design().battery().capacity())).isEqualTo(360_000);
        Position taken = reading.positions().of("/battery/cells-in-series");
        assertThat(Path.of(taken.file())).isEqualTo(plants.resolve("lib/banks.yaml"));
        assertThat(taken.line()).isEqualTo(3);
        assertThat(reading.positions().of("/battery/capacity").file()).endsWith("plant.yaml");
        assertThat(DesignEdit.of(reading, "/battery/cells-in-series", 4)).isNull();
        assertThat(DesignEdit.of(reading, "/battery/capacity", 4)).isNotNull();
    }

    @Test
    void a_fault_in_a_part_is_told_at_its_place_in_the_parts_file() throws IOException {
        Reading reading = read(taking("banks.yaml", "  part: bank\n"), "banks.yaml", BANK.replace("280 Ah", "280 V"));
        assertThat(reading.problems()).hasSize(1);
        assertThat(reading.problems().get(0).kind()).isEqualTo(ProblemKind.WRONG_UNIT);
        assertThat(reading.problems().get(0).position().file()).endsWith("banks.yaml");
        assertThat(reading.problems().get(0).position().line()).isEqualTo(4);
    }

    @Test
    void a_part_may_take_another_and_the_nearer_wins() throws IOException {
        Reading reading = read(
                taking("banks.yaml", "  part: larger\n"),
                "banks.yaml",
                BANK + "larger:\n  part: bank\n  capacity: 560 Ah\n");
        assertThat(reading.problems()).isEmpty();
        assertThat(Si.of(reading.design().battery().capacity())).isEqualTo(560 * 3600.0);
    }

    @Test
    void parts_in_a_circle_end_with_a_problem() throws IOException {
        Reading reading = read(taking("banks.yaml", "  part: a\n"), "banks.yaml", "a: { part: b }\nb: { part: a }\n");
        assertThat(reading.problems()).extracting(Problem::kind).containsExactly(ProblemKind.PART_CYCLE);
        assertThat(reading.problems().get(0).expected()).isEqualTo("a > b");
    }

    @Test
    void an_unknown_part_is_told_once_with_the_nearest() throws IOException {
        Reading reading = read(taking("banks.yaml", "  part: bnak\n"), "banks.yaml", BANK);
        assertThat(reading.problems()).extracting(Problem::kind).containsExactly(ProblemKind.UNKNOWN_PART);
        assertThat(reading.problems().get(0).hint()).isEqualTo("bank");
    }

    @Test
    void a_parts_file_outside_the_folder_is_refused_unless_allowed() throws IOException {
        Files.writeString(folder.resolve("banks.yaml"), BANK);
        String text = taking("../banks.yaml", "  part: bank\n");
        Reading refused = read(text);
        assertThat(refused.problems()).extracting(Problem::kind).containsExactly(ProblemKind.PARTS_FILE_OUTSIDE);
        Path file = plants.resolve("plant.yaml");
        assertThat(DesignReader.read(file, PartsFinder.anywhere(plants)).problems())
                .isEmpty();
        Files.createSymbolicLink(plants.resolve("link.yaml"), folder.resolve("banks.yaml"));
        assertThat(read(taking("link.yaml", "  part: bank\n")).problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.PARTS_FILE_OUTSIDE);
        assertThat(read(taking("\"" + folder.resolve("banks.yaml") + "\"", "  part: bank\n"))
                        .problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.PARTS_FILE_OUTSIDE);
    }

    @Test
    void missing_hostile_and_misshapen_parts_files_are_problems() throws IOException {
        assertThat(kinds(read(taking("none.yaml", "  part: bank\n")))).containsExactly(ProblemKind.PARTS_FILE_MISSING);
        assertThat(kinds(read(taking(".", "  part: bank\n")))).containsExactly(ProblemKind.PARTS_FILE_MISSING);
        assertThat(kinds(read(taking("list.yaml", "  part: bank\n"), "list.yaml", "- bank\n")))
                .contains(ProblemKind.WRONG_SHAPE);
        assertThat(kinds(read(taking("bad.yaml", "  part: bank\n"), "bad.yaml", "bank: *x\n")))
                .contains(ProblemKind.ALIAS);
        assertThat(kinds(read(taking("a.yaml, b.yaml", "  part: bank\n"), "a.yaml", BANK, "b.yaml", BANK)))
                .containsExactly(ProblemKind.DUPLICATE_FIELD);
    }

    @Test
    void a_part_taken_a_great_many_times_ends_within_bounds() {
        String sections = "  sections:\n" + "    - part: long\n".repeat(20_000);
        String text = SampleFiles.alderBeck()
                .replace("name: Alder", "parts: [p]\nname: Alder")
                .replace("  sections:\n", sections);
        String part = "long: { fittings: [" + "{ kind: union }, ".repeat(10_000) + "] }\n";
        Reading reading = DesignReader.read(text, "f", PartsFinder.of(Map.of("p", part)::get));
        assertThat(kinds(reading)).contains(ProblemKind.TOO_MANY_VALUES);
        assertThat(reading.problems()).hasSizeLessThanOrEqualTo(Problems.LIMIT + 1);
    }

    @Test
    void a_text_without_a_folder_takes_parts_from_a_function_or_not_at_all() {
        String text = taking("banks.yaml", "  part: bank\n");
        assertThat(kinds(DesignReader.read(text, "f"))).containsExactly(ProblemKind.PARTS_NOT_ALLOWED);
        PartsFinder parts = PartsFinder.of(Map.of("banks.yaml", BANK)::get);
        assertThat(kinds(DesignReader.read(text, "f", parts))).isEmpty();
        assertThat(kinds(DesignReader.read(text.replace("banks.yaml", "other.yaml"), "f", parts)))
                .containsExactly(ProblemKind.PARTS_FILE_MISSING);
    }

    private static List<ProblemKind> kinds(Reading reading) {
        return reading.problems().stream().map(Problem::kind).toList();
    }
}
