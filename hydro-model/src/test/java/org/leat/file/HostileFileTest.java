package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.design.Gauging;
import org.leat.design.Texts;

class HostileFileTest {

    @TempDir
    Path folder;

    @Test
    void an_alias_bomb_is_refused_at_its_first_anchor() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            bomb.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ", ").repeat(9)));
        }
        Reading reading = read(bomb.toString());
        assertThat(reading.design()).isNull();
        assertThat(reading.problems().get(0).kind()).isEqualTo(ProblemKind.ALIAS);
        assertThat(reading.problems().get(0).position()).hasToString("f:1:5");
    }

    @Test
    void a_merge_key_and_a_tag_are_refused() {
        assertThat(kinds("<<: { a: 1 }\nname: !!str x\n")).contains(ProblemKind.MERGE_KEY, ProblemKind.TAG);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{a: ", "- ", "? "})
    void ten_thousand_levels_end_at_the_limit(String open) {
        assertThat(kinds(open.repeat(10_000))).containsAnyOf(ProblemKind.TOO_DEEP, ProblemKind.SYNTAX);
    }

    @Test
    void deep_nesting_tells_the_limit_and_where_it_is_passed() {
        Problem problem = read("[".repeat(10_000)).problems().stream()
                .filter(p -> p.kind() == ProblemKind.TOO_DEEP)
                .findFirst()
                .orElseThrow();
        assertThat(problem.position().column()).isEqualTo(65);
        assertThat(problem.expected()).isEqualTo("at most 64 levels");
    }

    @Test
    void a_file_of_a_hundred_megabytes_is_refused_without_reading_it() throws IOException {
        Path file = folder.resolve("big.yaml");
        try (RandomAccessFile f = new RandomAccessFile(file.toFile(), "rw")) {
            f.setLength(100_000_000);
        }
        long before = System.nanoTime();
        Reading reading = DesignReader.read(file);
        assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(Duration.ofSeconds(2));
        assertThat(reading.problems()).extracting(Problem::kind).containsExactly(ProblemKind.TOO_LARGE);
    }

    @Test
    void a_text_over_the_limit_is_refused_too() {
        assertThat(kinds("#".repeat(SourceText.LIMIT + 1))).containsExactly(ProblemKind.TOO_LARGE);
    }

    @Test
    void the_largest_hostile_files_end_in_bounded_time() {
        String scalar = "a".repeat(SourceText.LIMIT - 10);
        String duplicates = "a: 1\n".repeat(SourceText.LIMIT / 5);
        String unknown = "[" + "{},".repeat(SourceText.LIMIT / 4) + "]";
        StringBuilder names = new StringBuilder();
        for (int i = 0; names.length() < SourceText.LIMIT - 60; i++) {
            names.append("inside-diameter-of-the-pipe-").append(i).append(": 1\n");
        }
        for (String text : List.of(scalar, duplicates, unknown, names.toString())) {
            Assertions.assertTimeout(Duration.ofSeconds(20), () -> {
                List<Problem> problems = read(text).problems();
                assertThat(problems).isNotEmpty().hasSizeLessThanOrEqualTo(Problems.LIMIT + 1);
            });
        }
    }

    @Test
    void more_than_a_hundred_problems_end_with_one_that_says_so() {
        List<Problem> problems = read("format: 1\n" + "format: 1\n".repeat(500)).problems();
        assertThat(problems).hasSize(101);
        assertThat(problems.get(100).kind()).isEqualTo(ProblemKind.MORE_PROBLEMS);
        assertThat(problems.get(0).hint()).isEqualTo("1");
    }

    @Test
    void bytes_that_are_not_utf_8_are_told_with_their_place() {
        byte[] latin = "name: a\nnotes: 3\u00B0C".getBytes(StandardCharsets.ISO_8859_1);
        Problem problem = DesignReader.read(latin, "f").problems().get(0);
        assertThat(problem.kind()).isEqualTo(ProblemKind.NOT_UTF_8);
        assertThat(problem.position()).hasToString("f:2:9");
        assertThat(problem.found()).isEqualTo("byte 0xB0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
    void utf_16_is_told_apart_or_refused(String charset) throws IOException {
        byte[] bytes = ("\uFEFF" + SampleFiles.alderBeck()).getBytes(charset);
        assertThat(DesignReader.read(bytes, "f").problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.NOT_UTF_8);
    }

    @Test
    void a_byte_order_mark_is_skipped_and_shifts_no_column() {
        byte[] bytes = ("\uFEFF" + SampleFiles.alderBeck()).getBytes(StandardCharsets.UTF_8);
        Reading reading = DesignReader.read(bytes, "f");
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.positions().of("/format")).hasToString("f:1:9");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n", "null\n", "---\n...\n"})
    void nothing_is_an_empty_file(String text) {
        assertThat(kinds(text)).containsExactly(ProblemKind.EMPTY);
    }

    @Test
    void a_nul_byte_is_told_with_its_place() {
        Problem problem = DesignReader.read("format: 1\nname: a\u0000b\n".getBytes(StandardCharsets.UTF_8), "f")
                .problems()
                .get(0);
        assertThat(problem.kind()).isEqualTo(ProblemKind.CONTROL_CHARACTER);
        assertThat(problem.position()).hasToString("f:2:8");
        assertThat(problem.found()).isEqualTo("U+0000");
    }

    @Test
    void every_further_document_is_a_problem() {
        assertThat(kinds(SampleFiles.alderBeck() + "---\na: 1\n---\nb: 2\n"))
                .containsExactly(ProblemKind.SECOND_DOCUMENT, ProblemKind.SECOND_DOCUMENT);
    }

    @Test
    void a_folder_and_a_missing_file_are_problems() {
        for (Path path : List.of(folder, folder.resolve("none.yaml"))) {
            assertThat(DesignReader.read(path).problems())
                    .extracting(Problem::kind)
                    .containsExactly(ProblemKind.UNREADABLE);
        }
    }

    @Test
    void a_key_that_is_a_list_is_a_problem_and_its_value_is_dropped() {
        assertThat(kinds("? [a, b]\n: c\nformat: 1\n")).contains(ProblemKind.FIELD_NAME);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e400", ".inf", "-.inf", ".nan", "99999999999999999999999999999999999999999"})
    void numbers_out_of_reach_are_refused(String number) {
        assertThat(kinds(SampleFiles.alderBeck().replace("sdr: 11", "sdr: " + number)))
                .containsExactly(ProblemKind.NOT_FINITE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0x10000000000", "2147483648", "-99999999999"})
    void whole_numbers_out_of_reach_are_refused(String number) {
        assertThat(kinds(SampleFiles.alderBeck().replace("pole-pairs: 15", "pole-pairs: " + number)))
                .containsExactly(ProblemKind.NOT_FINITE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e400 m", "1e9999 m", "-1e400 m", ".inf", ".nan", "NaN m", "1e31 m"})
    void quantities_out_of_reach_are_refused(String length) {
        assertThat(kinds(SampleFiles.alderBeck().replace("length: 84 m", "length: " + length)))
                .containsExactly(ProblemKind.NOT_FINITE);
    }

    @Test
    void a_text_cut_off_anywhere_never_throws_and_is_never_a_design_with_problems() {
        String text = SampleFiles.alderBeck();
        for (int i = 0; i < text.length(); i += 7) {
            Reading reading = read(text.substring(0, i));
            assertThat(reading.design() == null).isEqualTo(!reading.problems().isEmpty());
        }
    }

    @Test
    void control_characters_are_refused_and_marks_of_direction_come_out_as_codes() {
        List<Problem> problems =
                read("format: 1\n\"na\\u001b[31m\\u202Eme\": x\n").problems();
        Problem control = problems.stream()
                .filter(p -> p.kind() == ProblemKind.CONTROL_CHARACTER)
                .findFirst()
                .orElseThrow();
        assertThat(control.found()).isEqualTo("U+001B");
        assertThat(control.position()).hasToString("f:2:1");
        Problem unknown = problems.stream()
                .filter(p -> p.kind() == ProblemKind.UNKNOWN_FIELD)
                .findFirst()
                .orElseThrow();
        assertThat(unknown.found()).isEqualTo("na\uFFFD[31m\u202Eme");
        assertThat(ProblemText.line(unknown)).contains("na\uFFFD[31m\\u202Eme");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\uD83D", "\\uDE00", "\\uFFFE", "\\uFFFF", "\\uFDD0", "\\u0000", "\\u0007", "\\U0001FFFE"})
    void a_name_or_a_field_with_what_no_report_can_hold_is_refused_where_it_stands(String escape) {
        String code = "U+" + escape.substring(2).replaceFirst("^0+(?=.{4})", "");
        for (String text : List.of(
                SampleFiles.alderBeck().replace("name: run", "name: \"r" + escape + "n\""),
                SampleFiles.alderBeck().replace("pole-pairs:", "\"pole" + escape + "pairs\":"))) {
            Reading reading = read(text);
            assertThat(reading.design()).isNull();
            Problem problem = reading.problems().stream()
                    .filter(p -> p.kind() == ProblemKind.CONTROL_CHARACTER)
                    .findFirst()
                    .orElseThrow();
            assertThat(problem.found()).isEqualTo(code);
            assertThat(text.lines().skip(problem.position().line() - 1).findFirst())
                    .get()
                    .asString()
                    .contains(escape);
            for (Problem each : reading.problems()) {
                String all = each.found() + each.path() + each.hint() + each.expected() + ProblemText.line(each);
                assertThat(Texts.firstUnwritable(all)).as(all).isEqualTo(-1);
            }
        }
    }

    @Test
    void a_lone_half_of_a_character_in_the_text_or_the_name_of_a_file_harms_no_report() {
        assertThat(kinds("name: a\uD83Db\n")).containsExactly(ProblemKind.CONTROL_CHARACTER);
        Problem problem =
                DesignReader.read("", "pl\uD83Dan\uFFFE.yaml").problems().get(0);
        assertThat(problem.position().file()).isEqualTo("pl\uFFFDan\uFFFD.yaml");
        assertThat(RecordReader.read(Gauging.class, "", "\uDE00")
                        .problems()
                        .get(0)
                        .position())
                .hasToString("\uFFFD:1:1");
    }

    @ParameterizedTest
    @CsvSource({
        "sections, 8000, /penstock/sections, at most 100 items",
        "alternatives, 20000, /alternatives, at most 40 items",
        "open, 100000, /nozzles/open, at most 40 items",
        "loads, 5000, /loads, at most 500 items",
    })
    void a_list_longer_than_any_plant_has_is_one_problem_where_it_begins(
            String list, int count, String path, String expected) {
        String text = SampleFiles.alderBeck();
        String item = switch (list) {
            case "open" -> "9 mm";
            case "loads" -> "{ name: a, power: 1 W }";
            default -> "{ name: a }";
        };
        String many = "[" + (item + ", ").repeat(count - 1) + item + "]";
        text = switch (list) {
            case "sections" ->
                text.substring(0, text.indexOf("  sections:")) + "  sections: " + many + "\n"
                        + text.substring(text.indexOf("nozzles:"));
            case "open" -> text.replaceFirst("open: \\[.*?]", "open: " + many);
            default -> text.replaceFirst("(?ms)^" + list + ":.*?(?=^\\S|\\z)", "") + list + ": " + many + "\n";
        };
        List<Problem> problems = read(text).problems();
        assertThat(problems).extracting(Problem::path).containsExactly(path);
        assertThat(problems.get(0).kind()).isEqualTo(ProblemKind.TOO_MANY_VALUES);
        assertThat(problems.get(0).found()).isEqualTo(count + " items");
        assertThat(problems.get(0).expected()).isEqualTo(expected);
        assertThat(ProblemText.of(problems.get(0))).contains(count + " items; expected " + expected);
    }

    @Test
    void no_problem_is_long_however_long_what_stands_in_the_file() {
        String much = "x".repeat(500_000);
        for (String text : List.of(
                SampleFiles.alderBeck().replace("name: run", "name: " + much),
                SampleFiles.alderBeck().replace("name: run", "name: run\n      " + much + ": 1"),
                SampleFiles.alderBeck().replace("length: 84 m", "length: " + much),
                SampleFiles.alderBeck().replace("length: 84 m", "length: !" + much + " 84 m"),
                SampleFiles.alderBeck().replace("length: 84 m", "length: &" + much + " 84 m"),
                SampleFiles.alderBeck().replace("length: 84 m", "length: { kind: " + much + " }"))) {
            Reading reading = read(text);
            assertThat(reading.design()).isNull();
            assertThat(reading.problems())
                    .isNotEmpty()
                    .allSatisfy(p -> assertThat(ProblemText.line(p).length()).isLessThan(4000));
        }
    }

    @Test
    void a_name_is_no_longer_than_a_hundred_characters() {
        assertThat(kinds(SampleFiles.alderBeck().replace("name: run", "name: " + "r".repeat(100))))
                .isEmpty();
        Problem problem = read(SampleFiles.alderBeck().replace("name: run", "name: " + "r".repeat(101)))
                .problems()
                .get(0);
        assertThat(problem.kind()).isEqualTo(ProblemKind.IMPOSSIBLE_VALUE);
        assertThat(problem.expected()).isEqualTo("at most 100 characters");
    }

    private static Reading read(String text) {
        return DesignReader.read(text, "f");
    }

    private static List<ProblemKind> kinds(String text) {
        return read(text).problems().stream().map(Problem::kind).toList();
    }
}
