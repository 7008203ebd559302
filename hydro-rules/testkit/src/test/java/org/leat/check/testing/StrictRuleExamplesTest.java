package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Samples;
import org.leat.pack.BuiltInPack;

/** Whatever could make an example pass without having been run is refused. */
class StrictRuleExamplesTest {

    private static final String UNSOLVED = Samples.SHORT.replace(
            "gross-head: 24 m", "gross-head: { kind: gauge, pressure: 0.1 bar, gauge-above-nozzle: -2 m }");

    private static RuleExamples rule(Function<Judgement, List<Outcome>> judging) {
        return RuleExamples.of(MadePack.of(judging), MadePack.RULE, Samples.SHORT);
    }

    private static void refused(Consumer<RuleExamples> example, RuleExamples rule, String why) {
        assertThatThrownBy(() -> example.accept(rule))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(why);
    }

    @Test
    void a_rule_of_a_pack_that_does_not_have_it_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RuleExamples.of(new BuiltInPack(), "made/rule", Samples.SHORT));
    }

    @Test
    void a_rule_that_says_nothing_neither_passes_nor_fails_nor_does_not_apply() {
        RuleExamples silent = rule(j -> List.of());
        refused(RuleExamples::passes, silent, "should not break");
        refused(RuleExamples::fails, silent, "should not break");
        refused(RuleExamples::doesNotApply, silent, "should not break");
        refused(r -> r.open("/"), silent, "should not break");
    }

    @Test
    void a_rule_that_throws_is_no_example_of_anything() {
        RuleExamples broken = rule(j -> {
            throw new IllegalStateException("broken");
        });
        refused(RuleExamples::passes, broken, "should not break");
        refused(r -> r.open("/"), broken, "should not break");
    }

    @Test
    void only_a_pass_passes() {
        refused(RuleExamples::passes, rule(j -> List.of(j.at("/").says("wrong"))), "should pass");
        refused(RuleExamples::passes, rule(j -> List.of(j.at("/").notGiven("/site"))), "should pass");
        refused(RuleExamples::passes, rule(j -> List.of(j.at("/").says("look"))), "should pass");
        refused(RuleExamples::passes, rule(j -> List.of(j.at("/").says("say"))), "should pass");
        refused(RuleExamples::passes, rule(j -> List.of(j.at("/").says("none"))), "should pass");
        refused(
                RuleExamples::passes,
                rule(j -> List.of(j.at("/site").says("fine"), j.at("/").says("wrong"))),
                "should pass");
        assertThatCode(rule(j -> List.of(j.at("/").says("fine")))::passes).doesNotThrowAnyException();
    }

    @Test
    void a_failure_beside_an_open_question_is_told() {
        RuleExamples both =
                rule(j -> List.of(j.at("/").notGiven("/site"), j.at("/nozzles").says("wrong")));
        refused(r -> r.open("/site"), both, "should be open and fail nothing");
    }

    @Test
    void an_open_question_of_another_field_is_told() {
        refused(r -> r.open("/runner"), rule(j -> List.of(j.at("/").notGiven("/site"))), "for want of /runner");
    }

    @Test
    void a_plant_that_cannot_be_solved_passes_and_fails_nothing() {
        for (Function<Judgement, List<Outcome>> judging : List.<Function<Judgement, List<Outcome>>>of(
                j -> List.of(j.at("/").says("fine")),
                j -> List.of(j.at("/").says("wrong")),
                j -> List.of(j.at("/").says("none")))) {
            RuleExamples unsolved = RuleExamples.of(MadePack.of(judging), MadePack.RULE, UNSOLVED);
            refused(RuleExamples::passes, unsolved, "cannot be solved");
            refused(RuleExamples::fails, unsolved, "cannot be solved");
            refused(RuleExamples::doesNotApply, unsolved, "cannot be solved");
        }
    }

    @Test
    void what_the_design_suppresses_is_no_failure() {
        String suppressed =
                Samples.SHORT + "suppressions:\n  - rule: made/rule\n    at: site\n    reason: for a test\n";
        RuleExamples rule =
                RuleExamples.of(MadePack.of(j -> List.of(j.at("/site").says("wrong"))), MadePack.RULE, suppressed);
        refused(RuleExamples::fails, rule, "should not be suppressed");
    }

    @Test
    void a_design_with_alternatives_is_no_example() {
        String alternatives = Samples.SHORT + "alternatives:\n  - name: small\n    nozzles: { open: [8 mm] }\n";
        RuleExamples rule =
                RuleExamples.of(MadePack.of(j -> List.of(j.at("/").says("fine"))), MadePack.RULE, alternatives);
        refused(RuleExamples::passes, rule, "alternatives");
    }

    @Test
    void a_change_that_changes_nothing_is_refused() {
        RuleExamples rule = rule(j -> List.of(j.at("/").says("fine")));
        assertThatIllegalArgumentException().isThrownBy(() -> rule.with("24 m", "24 m"));
    }

    @Test
    void a_way_out_that_brings_another_failure_or_breaks_is_told() {
        Function<Judgement, List<Outcome>> fewCells =
                j -> List.of(j.at("/battery").holds(j.design().battery().cellsInSeries() == 16));
        MadePack vain = MadePack.of(fewCells, (j, failure) -> Stream.of(Change.of("/battery/cells-in-series", 16)));
        refused(RuleExamples::fails, RuleExamples.of(vain, MadePack.RULE, Samples.SHORT), "makes made/other fail");
        MadePack breaks = MadePack.of(fewCells, (j, failure) -> {
            throw new IllegalStateException("broken");
        });
        refused(RuleExamples::fails, RuleExamples.of(breaks, MadePack.RULE, Samples.SHORT), "should not break");
    }
}
