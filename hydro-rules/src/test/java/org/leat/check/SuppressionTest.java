package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.leat.check.Suppression.IdleSuppression;
import org.leat.file.DesignReader;
import org.leat.file.Position;
import org.leat.file.ProblemText;

class SuppressionTest {

    private static final LocalDate DAY = LocalDate.of(2031, 5, 30);

    private static final Rule HARMLESS = MadeRule.of(
            "a/bore",
            Level.WARNING,
            Level.WARNING,
            j -> List.of(
                    j.at("/nozzles/open[0]").during("shut").says("no"),
                    j.at("/site").during("shut").says("yes")));

    private static final Rule DANGEROUS = MadeRule.of(
            "a/burst",
            Level.ERROR,
            Level.ERROR,
            j -> List.of(j.at("/penstock/sections[run]/pipe").says("no")));

    private static final Rule OPEN = MadeRule.of(
            "a/vent", Level.ERROR, Level.ERROR, j -> List.of(j.at("/intake").notGiven("/intake/vent")));

    private static Report check(String suppressions, LocalDate day) {
        var reading = DesignReader.read(Samples.SHORT + suppressions, "sample.yaml");
        assertThat(reading.problems()).extracting(ProblemText::line).isEmpty();
        Checker checker = Checker.of(List.of(MadeRule.pack(HARMLESS, DANGEROUS, OPEN)));
        return (day == null ? checker : checker.on(day)).check(reading);
    }

    private static String suppress(String rule, String at, String more) {
        return "suppressions:\n  - rule: " + rule + "\n    at: " + at + "\n    reason: seen on site\n" + more;
    }

    @Test
    void a_suppressed_finding_is_told_and_does_not_count() {
        Report report = check(suppress("a/bore", "'nozzles.open[10 mm]'", ""), null);
        assertThat(report.failures(Level.WARNING)).isZero();
        assertThat(report.suppressed()).hasSize(1);
        Suppression word = report.suppressed().get(0).suppressed();
        assertThat(word.reason()).isEqualTo("seen on site");
        assertThat(word.inDesign()).isTrue();
        assertThat(word.position()).hasToString("sample.yaml:21:5");
        assertThat(report.idle()).isEmpty();
    }

    @Test
    void the_place_may_be_written_as_a_path_and_the_case_must_be_the_same() {
        assertThat(check(suppress("a/bore", "'/nozzles/open[10 mm]'", "    during: shut\n"), null)
                        .suppressed())
                .hasSize(1);
        assertThat(check(suppress("a/bore", "'/nozzles/open[10 mm]'", "    during: running\n"), null)
                        .suppressed())
                .isEmpty();
    }

    @Test
    void a_number_in_a_list_is_no_lasting_place_and_the_lasting_one_is_told() {
        Report report = check(suppress("a/bore", "'nozzles.open[0]'", ""), null);
        assertThat(report.suppressed()).isEmpty();
        assertThat(report.idle().get(0).why()).isEqualTo(IdleSuppression.Why.NUMBER_IN_A_LIST);
        assertThat(report.idle().get(0).nearest()).isEqualTo("nozzles.open[10 mm]");
    }

    @Test
    void what_suppresses_nothing_is_told_with_the_place_that_was_probably_meant() {
        IdleSuppression idle = check(suppress("a/burst", "'penstock.sections[rnu].pipe'", ""), null)
                .idle()
                .get(0);
        assertThat(idle.why()).isEqualTo(IdleSuppression.Why.NOTHING_THERE);
        assertThat(idle.nearest()).isEqualTo("penstock.sections[run].pipe");
        IdleSuppression unknown =
                check(suppress("a/brust", "site", ""), null).idle().get(0);
        assertThat(unknown.why()).isEqualTo(IdleSuppression.Why.NO_SUCH_RULE);
        assertThat(unknown.nearest()).isEqualTo("a/burst");
        assertThat(check(suppress("a/bore", "site", ""), null).idle().get(0).why())
                .as("a pass needs no suppression")
                .isEqualTo(IdleSuppression.Why.NOTHING_THERE);
    }

    @Test
    void it_holds_on_its_last_day_and_not_on_the_next_nor_on_an_unknown_one() {
        String until = suppress("a/bore", "'nozzles.open[10 mm]'", "    until: 2031-05-30\n");
        assertThat(check(until, DAY).suppressed()).hasSize(1);
        assertThat(check(until, DAY).day()).isEqualTo(DAY);
        Report after = check(until, DAY.plusDays(1));
        assertThat(after.suppressed()).isEmpty();
        assertThat(after.failures(Level.WARNING)).isEqualTo(1);
        assertThat(after.idle().get(0).why()).isEqualTo(IdleSuppression.Why.ENDED);
        Report unknown = check(until, null);
        assertThat(unknown.suppressed()).isEmpty();
        assertThat(unknown.idle().get(0).why()).isEqualTo(IdleSuppression.Why.DAY_NOT_KNOWN);
    }

    @Test
    void what_can_hurt_someone_needs_a_name_and_a_second_word() {
        String place = "'penstock.sections[run].pipe'";
        for (String more : List.of("", "    by: A. Example\n")) {
            Report refused = check(suppress("a/burst", place, more), null);
            assertThat(refused.failures(Level.ERROR)).isEqualTo(1);
            assertThat(refused.idle().get(0).why()).isEqualTo(IdleSuppression.Why.NOBODY_ANSWERS);
        }
        Report accepted = check(suppress("a/burst", place, "    by: A. Example\n    danger: accepted\n"), null);
        assertThat(accepted.failures(Level.ERROR)).isZero();
        assertThat(accepted.endangeringUncounted()).hasSize(1);
        assertThat(accepted.idle()).isEmpty();
    }

    @Test
    void an_open_question_about_danger_needs_them_too_and_stays_open() {
        assertThat(check(suppress("a/vent", "intake", ""), null).count(Kind.OPEN))
                .isEqualTo(1);
        Report accepted = check(suppress("a/vent", "intake", "    by: A. Example\n    danger: accepted\n"), null);
        assertThat(accepted.count(Kind.OPEN)).isZero();
        assertThat(accepted.suppressed().get(0).outcome().kind()).isEqualTo(Kind.OPEN);
    }

    @Test
    void the_second_word_without_a_name_and_a_blank_reason_are_problems_of_the_file() {
        for (String more : List.of("    danger: accepted\n", "    by: '?'\n", "    until: 2031-02-30\n")) {
            assertThat(DesignReader.read(Samples.SHORT + suppress("a/burst", "site", more), "s.yaml")
                            .problems())
                    .as(more)
                    .hasSize(1);
        }
        assertThat(DesignReader.read(
                                Samples.SHORT + "suppressions:\n  - { rule: a/b, at: site, reason: ' ' }\n", "s.yaml")
                        .problems())
                .hasSize(1);
    }

    @Test
    void a_suppression_beside_the_file_holds_for_the_design_it_names_only() {
        for (String design : List.of("sample", "other")) {
            Suppression beside = new Suppression(
                    "a/bore",
                    "nozzles.open[10 mm]",
                    "",
                    design,
                    "why",
                    null,
                    null,
                    false,
                    Position.startOf("x"),
                    false);
            Settings settings = new Settings(Map.of(), null, List.of(), List.of(beside));
            Report report =
                    Checker.of(List.of(MadeRule.pack(HARMLESS)), settings).check(Samples.reading());
            assertThat(report.suppressed()).hasSize(design.equals("sample") ? 1 : 0);
            assertThat(report.idle()).isEmpty();
        }
    }

    @Property(tries = 50)
    void whatever_is_suppressed_no_finding_goes_and_none_changes_its_kind(
            @ForAll boolean name, @ForAll boolean word, @ForAll boolean bore, @ForAll boolean ended) {
        String more = (name || word ? "    by: A. Example\n" : "")
                + (word ? "    danger: accepted\n" : "")
                + (ended ? "    until: 2000-01-01\n" : "");
        Report with = check(
                bore ? suppress("a/bore", "'nozzles.open[10 mm]'", more) : suppress("a/vent", "intake", more), DAY);
        assertThat(with.findings())
                .extracting(Finding::outcome)
                .isEqualTo(
                        check("", DAY).findings().stream().map(Finding::outcome).toList());
        assertThat(with.suppressed().size() + with.idle().size()).isEqualTo(1);
    }
}
