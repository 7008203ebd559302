package org.leat.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;

/** A plant of which all was judged, with one line taken out or made odd, is no longer one of which all was judged. */
class UnearnedVerdictTest {

    private static final Path SOUND = Path.of("../hydro-examples/designs/rowan-ghyll.yaml");
    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));
    private static final String ANCHORS = "  anchors: 6 kN\n";

    private static SafetyVerdict verdict(String from, String to, String more) throws IOException {
        String text = Files.readString(SOUND);
        assertThat(text).contains(from);
        var reading = DesignReader.read(text.replace(from, to) + more, "changed.yaml");
        assertThat(reading.problems()).isEmpty();
        return Overviews.of(CHECKER.examined(reading), CHECKER.rulebook()).verdict();
    }

    @Test
    void of_the_plant_as_it_is_every_question_of_safety_was_judged() throws IOException {
        SafetyVerdict verdict = verdict(ANCHORS, ANCHORS, "");
        assertThat(verdict.answer()).isIn(SafetyVerdict.Answer.JUDGED, SafetyVerdict.Answer.LOOK);
        assertThat(verdict.openEndangering()).isZero();
        assertThat(verdict.doubted()).isZero();
    }

    @Test
    void anchors_that_are_not_told_are_an_open_question_of_safety_although_weak_ones_are_a_warning()
            throws IOException {
        SafetyVerdict verdict = verdict(ANCHORS, "", "");
        assertThat(verdict.answer()).isEqualTo(SafetyVerdict.Answer.UNJUDGED);
        assertThat(verdict.openEndangering()).isOne();
    }

    @ParameterizedTest
    @CsvSource({
        "speed-limit: 3500 rpm, speed-limit: 35000 rpm",
        "thermal-resistance: 0.7 K/W, thermal-resistance: 0.01 K/W",
        "velocity-coefficient: 0.97, velocity-coefficient: 0.7",
        "measured-efficiency: 78 %, measured-efficiency: 7.8 %",
        "runaway-factor: 1.85, runaway-factor: 1.3",
        "no-load-loss: { power: 18 W, no-load-loss: { power: 18 kW",
        "junction-limit: 150 °C, junction-limit: 210 °C",
        "charge-current-limit: 100 A, charge-current-limit: 900 A",
        "charge-voltage-limit: 29.2 V, charge-voltage-limit: 34 V",
    })
    void what_rests_on_an_odd_number_is_not_judged_by_it(String stated, String odd) throws IOException {
        SafetyVerdict verdict = verdict(stated, odd, "");
        assertThat(verdict.answer()).isEqualTo(SafetyVerdict.Answer.UNJUDGED);
        assertThat(verdict.doubted()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({
        "'', 1, 0",
        "'    by: A. Reader\n', 1, 0",
        "'    by: A. Reader\n    danger: accepted\n', 0, 1",
    })
    void a_question_of_what_can_hurt_is_set_aside_only_by_who_answers_for_it_and_is_counted_then(
            String word, long open, long setAside) throws IOException {
        SafetyVerdict verdict = verdict(
                ANCHORS,
                "",
                "\nsuppressions:\n  - rule: penstock/thrust\n    at: penstock\n    reason: seen on site\n" + word);
        assertThat(verdict.answer()).isEqualTo(SafetyVerdict.Answer.UNJUDGED);
        assertThat(verdict.openEndangering()).isEqualTo(open);
        assertThat(verdict.setAside()).isEqualTo(setAside);
    }
}
