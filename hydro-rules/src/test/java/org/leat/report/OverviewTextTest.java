package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.check.Checker;
import org.leat.check.Edit;
import org.leat.check.Examined;
import org.leat.check.Kind;
import org.leat.check.Report;
import org.leat.check.Samples;
import org.leat.choice.Overview;
import org.leat.choice.SafetyVerdict;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.plant.solved.OperatingPoint;
import org.leat.report.TextWriter.Colours;

/** One design on one screen. */
class OverviewTextTest {

    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));
    private static final Path DEMOS = Path.of("../hydro-examples/designs");
    private static final Path BASES = Path.of("src/main/resources/org/leat/pack/bases");

    static List<Path> designs() throws IOException {
        List<Path> all = new ArrayList<>();
        for (Path folder : List.of(DEMOS, BASES)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(all::add);
            }
        }
        return all;
    }

    /** A design judged once, to be written in several ways. */
    private record Judged(Reading reading, Report report, Overview overview) {

        static Judged of(Reading reading) {
            assertThat(reading.problems()).isEmpty();
            Examined examined = CHECKER.examined(reading);
            return new Judged(reading, examined.report(), Overview.of(examined, CHECKER.rulebook()));
        }

        List<String> lines(int width, boolean whole, Colours colours) throws IOException {
            StringBuilder out = new StringBuilder();
            TextWriter writer = new TextWriter(CHECKER.rulebook(), out, colours, width, whole);
            writer.add(report, reading, overview);
            writer.end();
            return out.toString().lines().toList();
        }
    }

    private static List<String> lines(Reading reading, int width, boolean whole, Colours colours) throws IOException {
        return Judged.of(reading).lines(width, whole, colours);
    }

    private static int widest(List<String> lines) {
        return lines.stream().mapToInt(Columns::of).max().orElse(0);
    }

    @ParameterizedTest
    @MethodSource("designs")
    void one_screen_of_forty_lines_holds_what_matters_and_nothing_is_wider_than_the_screen(Path file)
            throws IOException {
        Judged judged = Judged.of(DesignReader.read(file));
        List<String> screen = judged.lines(100, false, Colours.NONE);
        assertThat(screen).hasSizeLessThanOrEqualTo(40);
        assertThat(widest(screen)).isLessThanOrEqualTo(100);
        assertThat(String.join("\n", screen)).contains("Safe to open?", "It gives", "Understood", "can maim and kill");
        for (int width : List.of(100, 72, 40)) {
            assertThat(widest(judged.lines(width, true, Colours.NONE))).isLessThanOrEqualTo(width);
        }
    }

    @Test
    void the_first_design_of_the_guide_fits_the_screen_too() throws IOException {
        String guide = Files.readString(Path.of("../docs/guide.md"));
        int from = guide.indexOf("format: 1\nname: first try");
        String design = guide.substring(from, guide.indexOf("```", from));
        List<String> lines = lines(DesignReader.read(design, "first-try.yaml"), 100, false, Colours.NONE);
        assertThat(lines).hasSizeLessThanOrEqualTo(40);
        assertThat(widest(lines)).isLessThanOrEqualTo(100);
    }

    /** A sound plant with an earth bond and a residual-current device taken away, and its inverter's surge untold. */
    private static Judged warned() throws IOException {
        String sound = Files.readString(DEMOS.resolve("rowan-ghyll.yaml"));
        String warned = sound.replaceFirst("frame-earthed: true", "frame-earthed: false")
                .replaceFirst("residual-current-device: true", "residual-current-device: false")
                .replaceFirst(", surge-factor: 5", "");
        return Judged.of(DesignReader.read(warned, "warned.yaml"));
    }

    @Test
    void warnings_of_what_can_hurt_are_never_called_nothing_against_it() throws IOException {
        Judged warned = warned();
        assertThat(warned.overview().verdict().errors()).isZero();
        assertThat(warned.overview().verdict().answer()).isEqualTo(SafetyVerdict.Answer.WARNED);
        assertThat(String.join(" ", warned.lines(400, false, Colours.NONE)))
                .contains("Not as it stands. No error, but 2 warnings of what can hurt someone.")
                .doesNotContain("Nothing that was judged speaks against it");
        assertThat(OverviewWords.shortly(warned.overview().verdict()))
                .isEqualTo("not as it stands: 2 warnings of what can hurt someone");
    }

    @Test
    void a_first_start_stops_at_those_warnings_and_at_no_question_that_the_verdict_does_not_count() throws IOException {
        Judged warned = warned();
        assertThat(warned.report().worstFirst(Kind.OPEN))
                .anyMatch(f -> f.outcome().rule().equals("inverter/surge"));
        assertThat(warned.overview().verdict().openEndangering()).isZero();
        StartSheet.Hindered hindered = new StartSheet(CHECKER.rulebook()).hindered(warned.report());
        assertThat(hindered.fails()).isEmpty();
        assertThat(hindered.unsettled())
                .satisfiesExactlyInAnyOrder(
                        first -> assertThat(first).startsWith("loads/residual-current: "),
                        second -> assertThat(second).startsWith("protection/earthing: "));
    }

    @Test
    void two_runs_write_the_same() throws IOException {
        Reading reading = DesignReader.read(DEMOS.resolve("tannery-yard.yaml"));
        assertThat(lines(reading, 100, true, Colours.NONE)).isEqualTo(lines(reading, 100, true, Colours.NONE));
    }

    @Test
    void colours_only_add_escape_sequences() throws IOException {
        Reading reading = DesignReader.read(DEMOS.resolve("tannery-yard.yaml"));
        List<String> coloured = lines(reading, 80, true, Colours.TERMINAL);
        assertThat(coloured.stream()
                        .map(l -> l.replaceAll("\u001b\\[[0-9;]*m", ""))
                        .toList())
                .isEqualTo(lines(reading, 80, true, Colours.NONE));
        assertThat(widest(coloured)).isLessThanOrEqualTo(80);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\u202E[31mred\\u200F\\u2028", "{flow} %s \\\\", "水力", "x"})
    void names_of_any_length_and_kind_stay_text_and_on_the_screen(String begin) throws IOException {
        String name = begin + "long ".repeat(8) + "x".repeat(40);
        String design = Samples.SHORT
                .replace("name: sample", "name: \"" + name + "\"")
                .replace("name: run", "name: \"" + name + "\"");
        Judged judged = Judged.of(DesignReader.read(design, "\u001b[2J" + "folder/".repeat(60) + "hostile.yaml"));
        List<String> lines = judged.lines(100, false, Colours.NONE);
        assertThat(lines).hasSizeLessThanOrEqualTo(40);
        assertThat(widest(lines)).isLessThanOrEqualTo(100);
        for (boolean whole : List.of(true, false)) {
            assertThat(String.join("", judged.lines(100, whole, Colours.NONE)))
                    .doesNotContainPattern("[\\p{Cntrl}\\u202e\\u200f\\u2028]");
        }
    }

    @Test
    void what_the_plan_leaves_is_told_in_the_numbers_of_the_list() throws IOException {
        String text = String.join(
                "\n", lines(DesignReader.read(DEMOS.resolve("orchard-sluice.yaml")), 100, false, Colours.NONE));
        assertThat(text).contains("  1. ", "  2. ", "1 and 2 together leave no error.");
    }

    @Test
    void the_fields_of_a_change_are_named_by_the_part_that_holds_them_all() {
        assertThat(OverviewText.fields(List.of(new Edit("/a/b[x]/c", 1)))).isEqualTo("a.b[x].c");
        assertThat(OverviewText.fields(List.of(new Edit("/a/b/c", 1), new Edit("/a/b/d", 1))))
                .isEqualTo("a.b");
        assertThat(OverviewText.fields(List.of(new Edit("/a/b/c", 1), new Edit("/ab/d", 1))))
                .isEqualTo("a.b.c, ab.d");
    }

    @Test
    void lines_break_at_blanks_and_never_between_a_number_and_its_unit() {
        assertThat(Columns.wrapped("  one two three", 9)).containsExactly("  one two", "    three");
        assertThat(Columns.wrapped("it takes 12.5 V", 14)).containsExactly("it takes", "    12.5 V");
        assertThat(Columns.wrapped("abcdefghij", 4, 0)).containsExactly("abcd", "efgh", "ij");
    }

    @Test
    void wide_letters_count_for_two_and_marks_for_none() {
        assertThat(Columns.of("水力")).isEqualTo(4);
        assertThat(Columns.of("e\u0301")).isEqualTo(1);
        assertThat(Columns.of("\u001b[1mab\u001b[0m")).isEqualTo(2);
    }

    @Test
    void a_wheel_that_the_file_does_not_tell_is_said_to_be_assumed_and_asked_for() throws IOException {
        String text =
                String.join("\n", lines(DesignReader.read(DEMOS.resolve("first-try.yaml")), 100, false, Colours.NONE));
        assertThat(text).containsPattern("wheel\\s+\\d+\\s+mm\\s+assumed");
        assertThat(text.substring(text.indexOf("Tell or measure"))).contains("runner.pitch-diameter: measure across");
        Judged told = Judged.of(DesignReader.read(
                Files.readString(DEMOS.resolve("first-try.yaml"))
                        + "runner: { kind: pelton, pitch-diameter: 140 mm }\n",
                "told.yaml"));
        assertThat(String.join("\n", told.lines(100, false, Colours.NONE)))
                .containsPattern("wheel\\s+140\\s+mm[;,]")
                .doesNotContain("pitch-diameter: measure");
    }

    @Test
    void a_wheel_too_slow_for_the_battery_is_not_called_one_that_runs_past_the_alternator() throws IOException {
        Judged slow = Judged.of(DesignReader.read(
                Files.readString(DEMOS.resolve("first-try.yaml")).replace("speed: 1000 rpm", "speed: 4000 rpm")
                        + "runner: { kind: pelton, pitch-diameter: 200 mm }\n",
                "slow.yaml"));
        assertThat(slow.report().running().get(0).operatingPoint().hold()).isEqualTo(OperatingPoint.Hold.BELOW_CUT_IN);
        assertThat(OverviewText.yieldOf(slow.overview().yields()))
                .contains("turns too slowly for the battery\u2019s volts: no current")
                .doesNotContain("does not hold");
    }

    @Test
    void one_error_that_stays_is_told_of_as_one() throws IOException {
        String text = Files.readString(DEMOS.resolve("first-try.yaml")) + "regulator: { kind: tracking }\n";
        String shown =
                String.join(" ", Judged.of(DesignReader.read(text, "f.yaml")).lines(100, false, Colours.NONE));
        assertThat(shown.replaceAll("\\s+", " "))
                .contains("leaves 1 error (protection/touch-voltage): only advice is known against it.");
    }
}
