package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What people type: read with the right meaning, or refused with the right words. */
class SlipsTest {

    static Stream<Arguments> slips() {
        return SampleFiles.resource("slips.txt")
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(" \\| ?", -1))
                .map(parts -> Arguments.of(
                        parts[0].replace("\\n", "\n"),
                        parts[1].replace("\\n", "\n"),
                        parts[2].replace("\\n", "\n"),
                        parts.length > 3 ? parts[3] : ""));
    }

    @Test
    void there_are_two_hundred_and_more() {
        assertThat(slips().count()).isGreaterThan(200);
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("slips")
    void a_slip_is_read_as_meant_or_refused_with_the_words_to_write(
            String sound, String typed, String outcome, String words) {
        String text = SampleFiles.alderBeck();
        assertThat(text).contains(sound);
        Reading reading = DesignReader.read(replaced(text, sound, typed), "f");
        if (outcome.startsWith("= ")) {
            assertThat(reading.problems()).extracting(ProblemText::line).isEmpty();
            Reading meant = DesignReader.read(replaced(text, sound, outcome.substring(2)), "f");
            assertThat(meant.problems()).extracting(ProblemText::line).isEmpty();
            assertThat(reading.design()).isEqualTo(meant.design());
            return;
        }
        List<Problem> problems = reading.problems().stream()
                .filter(p -> p.kind() != ProblemKind.MISSING_FIELD || words.isEmpty())
                .toList();
        assertThat(problems).extracting(ProblemText::line).hasSize(1);
        Problem problem = problems.get(0);
        assertThat(problem.kind().id()).isEqualTo(outcome.substring(2));
        assertThat(problem.hint()).isEqualTo(words);
        int line = (int) text.substring(0, text.indexOf(sound))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
        assertThat(problem.position().line())
                .isBetween(
                        line, line + (int) typed.chars().filter(c -> c == '\n').count());
        if (!words.isEmpty()) {
            assertThat(ProblemText.of(problem)).contains(words);
        }
    }

    private static String replaced(String text, String sound, String other) {
        int at = text.indexOf(sound);
        return text.substring(0, at) + other + text.substring(at + sound.length());
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("slips")
    void words_that_are_given_are_read(String sound, String typed, String outcome, String words) {
        if (words.isEmpty()
                || List.of("! unknown-field", "! wrong-unit", "! unknown-word", "! not-text")
                        .contains(outcome)) {
            return; // names of fields, words and kinds of quantity
        }
        String field = typed.contains(":") ? typed.substring(0, typed.lastIndexOf(':')) : null;
        for (String one : words.replace(" (lithium-iron-phosphate)", "").split("\" or \"", -1)) {
            String text = SampleFiles.alderBeck();
            String value = one.startsWith("[") || !sound.contains("[") ? one : "[" + one + "]";
            String whole = field == null ? value : field + ": " + value;
            if (typed.startsWith("{")
                    || typed.contains("%, flow")
                    || typed.contains(", hours")
                    || typed.contains(", count")) {
                continue; // within braces: the value stands in the middle
            }
            Reading reading = DesignReader.read(replaced(text, sound, whole), "f");
            assertThat(reading.problems())
                    .filteredOn(p -> p.kind() != ProblemKind.IMPOSSIBLE_VALUE && p.kind() != ProblemKind.CONTRADICTION)
                    .extracting(ProblemText::line)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'{ kind: polyethylene, material: pe100, inside-diameter: 51 mm, sdr: 11 }', 'outside-diameter: as marked, that is the inside one and twice the wall'",
        "'{ kind: pvc-u, id: 57 mm, wall: 3 mm }', 'outside-diameter: as marked, that is the inside one and twice the wall'",
        "'{ kind: steel, bore: 57 mm, wall: 3 mm }', 'outside-diameter: as marked, that is the inside one and twice the wall'",
        "'{ kind: hose, outside-diameter: 57 mm }', 'bore: the inside diameter, that is the outside one less twice the wall'"
    })
    void one_diameter_of_a_pipe_is_never_taken_for_the_other_and_the_way_to_it_is_told(String pipe, String words) {
        String text = SampleFiles.alderBeck().replaceFirst("pipe:\n( {8}.*\n)+", "pipe: " + pipe + "\n");
        Reading reading = DesignReader.read(text, "f");
        assertThat(reading.design()).isNull();
        assertThat(reading.problems())
                .filteredOn(p -> p.kind() == ProblemKind.UNKNOWN_FIELD)
                .singleElement()
                .satisfies(p -> assertThat(p.expected()).isEqualTo(words));
    }
}
