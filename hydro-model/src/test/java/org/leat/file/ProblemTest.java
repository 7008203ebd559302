package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.design.ElementPath;

class ProblemTest {

    /** One change of the sound file, and the one problem it makes. */
    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "outside-diameter: 63 mm\\n        sdr: 17 | outside_diameter: 63 mm\\n        sdr: 17 | unknown-field | /penstock/sections[run]/pipe/outside_diameter | outside_diameter | | outside-diameter",
                "rated-fittings: 10 bar | rated-fittings: 10 m | wrong-unit | /penstock/rated-fittings | 10 m | a pressure | a length",
                "rated-fittings: 10 bar | rated-fittings: 10 | no-unit | /penstock/rated-fittings | 10 | a pressure |",
                "length: 84 m | length: 84 furlongs | unknown-unit | /penstock/sections[run]/length | 84 furlongs | a length |",
                "length: 84 m | length: 84,5 m | decimal-comma | /penstock/sections[run]/length | 84,5 m | a length | 84.5 m",
                "length: 84 m | length: -84 m | impossible-value | /penstock/sections[run]/length | -84 m | at least 0.001 m |",
                "length: 84 m | length: 84 m ± 1 m | tolerance | /penstock/sections[run]/length | 84 m ± 1 m | a length | 84 m",
                "16.5 m ± 0.3 m | 16.5 m ± -0.3 m | negative-tolerance | /site/gross-head | 16.5 m ± -0.3 m | a length | 16.5 m ± 0.3 m",
                "length: 84 m | length: long | not-a-quantity | /penstock/sections[run]/length | long | a length |",
                "length: 84 m | length: [84 m] | wrong-shape | /penstock/sections[run]/length | a list | a length | 84 m",
                "length: 84 m | length: | no-value | /penstock/sections[run]/length | | a length |",
                "efficiency: 0.9 | efficiency: 109 % | impossible-value | /inverter/efficiency | 109 % | at most 100 % |",
                "kind: turgo | kind: turbo | unknown-word | /runner/kind | turbo | one of the words | turgo",
                "kind: volts-at-speed | kind: volts-at-sped | unknown-word | /alternator/open-circuit/kind | volts-at-sped | the kind | volts-at-speed",
                "pole-pairs: 15 | pole-pairs: 15.5 | not-whole | /alternator/pole-pairs | 15.5 | a whole number |",
                "pole-pairs: 15 | pole-pairs: \"15\" | not-whole | /alternator/pole-pairs | 15 | a whole number | 15",
                "sdr: 17 | sdr: wide | not-a-number | /penstock/sections[run]/pipe/sdr | wide | a number |",
                "sdr: 17 | sdr: 17,6 | decimal-comma | /penstock/sections[run]/pipe/sdr | 17,6 | a number | 17.6",
                "below-valve: true | below-valve: yes | not-yes-no | /intake/vent/below-valve | yes | true or false | true",
                "name: Alder Beck bothy | name: 1234 | not-text | /name | 1234 | text | '1234'",
                "sdr: 17 | wall: 40 mm | contradiction | /penstock/sections[run]/pipe/outside-diameter | 63 mm | more than three times the wall, 40 mm |",
                "sdr: 17 | | missing-choice | /penstock/sections[run]/pipe/sdr | | the SDR, or the wall thickness |",
                "gross-head: 16.5 m ± 0.3 m | gross-head: 24 m ± 30 m | impossible-value | /site/gross-head | 24 m ± 30 m | a tolerance smaller than the value: what cannot be zero is known to be more |",
                "gross-head: 16.5 m ± 0.3 m | gross-head: 24 km | impossible-value | /site/gross-head | 24 km | at most 3 km |",
                "open: [ 10 mm ] | open: [ 10 km ] | impossible-value | /nozzles/open[0] | 10 km | at most 0.001 km |",
                "from-elevation: 16.2 m | from-elevation: 15 m | contradiction | /penstock/sections | suction ending at 16.2 m and run beginning at 15 m | each section beginning at the elevation where the one before ends |",
                "open: [ 10 mm ] | open: [] | impossible-value | /nozzles/open | 0 items | at least 1 |",
                "open: [ 10 mm ] | open: [ 10 mm, 0 mm ] | impossible-value | /nozzles/open[1] | 0 mm | at least 0.1 mm |",
                "capacity: 200 Ah | | missing-field | /battery/capacity | | a charge | of the whole bank, 20 hours for lead",
                "format: 1 | | missing-format | /format | | format: 1 | version of the file format",
                "format: 1 | format: 2 | unsupported-format | /format | 2 | format: 1 |",
                "pole-pairs: 15 | pole-pairs: 15\\n  pole-pairs: 16 | duplicate-field | /alternator/pole-pairs | pole-pairs | each field once | 73",
            })
    void each_fault_is_told_once_with_its_arguments(
            String sound, String faulty, String kind, String path, String found, String expected, String hint) {
        String text = SampleFiles.alderBeck();
        String from = sound.replace("\\n", "\n");
        assertThat(text).contains(from.strip());
        Reading reading = DesignReader.read(
                text.replace(from.strip(), (faulty == null ? "" : faulty.replace("\\n", "\n")).strip()), "f");
        assertThat(reading.problems()).as(reading.problems().toString()).hasSize(1);
        Problem p = reading.problems().get(0);
        assertThat(List.of(p.kind().id(), p.path(), p.found(), p.expected(), p.hint()))
                .containsExactly(kind, path, empty(found), empty(expected), empty(hint));
    }

    private static String empty(String text) {
        return text == null ? "" : text;
    }

    @Test
    void all_problems_of_a_file_come_in_one_pass_in_the_order_of_the_file() {
        Reading reading = DesignReader.read(SampleFiles.resource("faulty.yaml"), "faulty.yaml");
        assertThat(reading.design()).isNull();
        assertThat(reading.problems())
                .extracting(ProblemText::line)
                .containsExactly(SampleFiles.resource("faulty.txt").lines().toArray(String[]::new));
    }

    @Test
    void after_a_syntax_error_nothing_is_called_missing_but_what_was_read_is_checked() {
        String text = "format: 1\nnaem: x\nsite:\n  altitude: 4 bar\n  gross-head: [1 m\nbattery: {}\n";
        assertThat(DesignReader.read(text, "f").problems())
                .extracting(p -> p.kind().id() + " " + p.position())
                .contains("unknown-field f:2:1", "wrong-unit f:4:13")
                .anyMatch(line -> line.startsWith("syntax "))
                .noneMatch(line -> line.startsWith("missing"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a: b: c | one field on a line, or quotation marks around a text with \": \"",
                "a: 'b | the closing quotation mark",
                "a: {b: c | a comma or the closing }",
                "a: [b, c | a comma or the closing ]",
                "a: @b | quotation marks around a text that begins with this character",
            })
    void a_syntax_error_is_told_in_the_words_of_whoever_wrote_the_file(String text, String expected) {
        assertThat(DesignReader.read(text + "\n", "f").problems())
                .filteredOn(p -> p.kind() == ProblemKind.SYNTAX)
                .extracting(Problem::expected)
                .containsExactly(expected);
    }

    @Test
    void indentation_with_a_tab_and_uneven_indentation_are_told() {
        assertThat(syntax("a:\n\tb: c\n")).isEqualTo("blanks, not a tab, before a field name");
        assertThat(syntax("a:\n    b: c\n  d: e\n"))
                .isEqualTo("the same number of blanks before each field of one mapping");
        assertThat(syntax("a: 1\nbcd\ne: 2\n")).isEqualTo("a colon and a blank after the field name");
    }

    private static String syntax(String text) {
        return DesignReader.read(text, "f").problems().stream()
                .filter(p -> p.kind() == ProblemKind.SYNTAX)
                .map(Problem::expected)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void problems_do_not_depend_on_the_default_locale() {
        Locale was = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.GERMANY, new Locale("tr", "TR"), new Locale("ar", "EG"))) {
                Locale.setDefault(locale);
                assertThat(DesignReader.read(SampleFiles.alderBeck(), "f").problems())
                        .isEmpty();
                all_problems_of_a_file_come_in_one_pass_in_the_order_of_the_file();
            }
        } finally {
            Locale.setDefault(was);
        }
    }

    @Test
    void problems_are_totally_ordered() {
        List<Problem> problems = new ArrayList<>(DesignReader.read(SampleFiles.resource("faulty.yaml"), "faulty.yaml")
                .problems());
        List<Problem> sorted = new ArrayList<>(problems);
        Collections.reverse(problems);
        Collections.sort(problems);
        assertThat(problems).isEqualTo(sorted);
        for (int i = 1; i < sorted.size(); i++) {
            assertThat(sorted.get(i - 1)).isLessThan(sorted.get(i));
        }
    }

    @Test
    void json_is_read_by_the_same_reader_with_the_same_positions() {
        String json = "{\n\t\"format\": 1,\n\t\"name\": \"\\u00e4 \\/\",\n\t\"site\": {\"gross-head\": \"3 bar\"}\n}\n";
        Reading reading = DesignReader.read(json, "f.json");
        assertThat(reading.problems())
                .filteredOn(p -> p.kind() == ProblemKind.WRONG_UNIT)
                .extracting(p -> p.position().toString())
                .containsExactly("f.json:4:25");
    }

    @Test
    void columns_count_code_points_and_a_range_ends_one_past_the_value() {
        String text =
                SampleFiles.alderBeck().replace("name: Alder Beck bothy", "name: \"\uD83D\uDCA7\uD83D\uDCA7\" # x");
        Positions positions = DesignReader.read(text, "f").positions();
        assertThat(positions.of("/name")).isEqualTo(new Position("f", 2, 7, 2, 11));
        assertThat(positions.of("/battery/cells-in-series").column()).isEqualTo(20);
        assertThat(positions.of("/site/water-temperature")).isEqualTo(new Position("f", 6, 22, 6, 54));
    }

    @Test
    void a_path_in_no_file_points_to_its_nearest_parent() {
        Positions positions = DesignReader.read(SampleFiles.alderBeck(), "f").positions();
        assertThat(positions.of("/penstock/sections[run]/pipe/wall"))
                .isEqualTo(positions.of("/penstock/sections[run]/pipe"));
        assertThat(positions.of("/penstock/sections[none]/pipe")).isEqualTo(positions.of("/penstock/sections"));
        assertThat(positions.of("/safeguards/runner-guard")).isEqualTo(positions.of("/"));
        assertThat(positions.of("/cables[0]/length").line()).isEqualTo(85);
        assertThat(positions.exactly("/safeguards")).isNull();
    }

    @Test
    void items_go_by_their_name_and_by_index_where_it_is_missing_or_taken() {
        String text = SampleFiles.alderBeck().replace("name: fridge", "name: lights");
        Reading reading = DesignReader.read(text, "f");
        assertThat(reading.positions().exactly("/loads[lights]/power")).isNotNull();
        assertThat(reading.positions().exactly("/loads[1]/power")).isNotNull();
        assertThat(ElementPath.item("/loads", reading.design().loads(), 0)).isEqualTo("/loads[lights]");
        assertThat(ElementPath.item("/loads", reading.design().loads(), 1)).isEqualTo("/loads[1]");
        assertThat(ElementPath.item("/cables", reading.design().cables(), 0)).isEqualTo("/cables[0]");
        assertThat(ElementPath.items("/loads", reading.design().loads()))
                .startsWith("/loads[lights]", "/loads[1]")
                .hasSameSizeAs(reading.design().loads());
    }

    @ParameterizedTest
    @ValueSource(strings = {"58 bar ± 1 m", "58 m ± 1 bar", "58 bar ± 1 bar", "58 bar"})
    void a_tolerance_hides_no_wrong_unit(String head) {
        var reading = DesignReader.read(
                "format: 1\nname: x\nsite: { gross-head: '" + head + "', stream: { flow: 1 L/s } }\n", "x.yaml");
        assertThat(reading.problems())
                .filteredOn(p -> p.path().equals("/site/gross-head"))
                .singleElement()
                .satisfies(p -> assertThat(p.kind()).isEqualTo(ProblemKind.WRONG_UNIT))
                .satisfies(p -> assertThat(ProblemText.line(p)).contains("a pressure, where a length belongs"));
    }
}
