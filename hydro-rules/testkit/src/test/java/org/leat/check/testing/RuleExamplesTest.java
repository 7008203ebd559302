package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.check.Level;
import org.leat.check.Rule;
import org.leat.check.Samples;
import org.leat.pack.BuiltInPack;
import org.leat.quantity.QuantityKind;

/** Rules of the pack by the kit that other packs are tested with, and the kit by rules that are not right. */
class RuleExamplesTest {

    private static RuleExamples rule(String id) {
        return RuleExamples.of(new BuiltInPack(), id, Samples.SHORT);
    }

    @Test
    void standing_pressure() {
        RuleExamples rule = rule("penstock/static-pressure");
        rule.with("penstock:", "penstock:\n  highest-wall-temperature: 25 °C").passes();
        rule.open("/site/air-temperature/highest");
        assertThat(rule.with("24 m", "200 m").fails()).hasSize(1);
    }

    @Test
    void velocity() {
        RuleExamples rule = rule("penstock/velocity");
        rule.passes();
        rule.with("[10 mm]", "[20 mm, 20 mm]").fails();
    }

    @Test
    void what_is_not_as_claimed_is_told_with_what_was_found() {
        RuleExamples rule = rule("penstock/velocity");
        assertThatThrownBy(rule::fails)
                .isInstanceOf(AssertionError.class)
                .hasMessageContainingAll(
                        "penstock/velocity should fail but found", "pass at /penstock/sections[run]/pipe");
        assertThatThrownBy(() -> rule.open("/penstock")).isInstanceOf(AssertionError.class);
        assertThatThrownBy(rule::doesNotApply).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> rule.with("name: sample", "nmae: sample").passes())
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("no design");
        assertThatIllegalArgumentException().isThrownBy(() -> rule.with("m", "n"));
        assertThatIllegalArgumentException().isThrownBy(() -> rule.with("not there", "n"));
    }

    @Test
    void a_failure_that_does_not_name_its_value_or_limit_is_refused() {
        for (String text : List.of("Too much: {value}.", "Too much, over {limit}.")) {
            assertThatThrownBy(saying("Fine.", text, 3)::fails)
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining("does not name its");
        }
        assertThat(saying("Fine.", "{value} is over {limit}.", 3).fails()).hasSize(1);
    }

    @Test
    void a_placeholder_that_nothing_fills_is_refused() {
        assertThatThrownBy(saying("Fine, {nothing}.", "{value}, {limit}", 1)::passes)
                .isInstanceOf(AssertionError.class);
    }

    /** A rule that holds a number against 2. */
    private static RuleExamples saying(String fine, String wrong, double number) {
        Rule rule = Rule.of(MadePack.RULE, Level.WARNING, "a number")
                .why("For tests.")
                .formula("none")
                .judged("as it is")
                .source("common practice")
                .limit("most", QuantityKind.RATIO, 2, "", "common practice")
                .passes("fine", fine)
                .fails("wrong", wrong)
                .judge(j -> j.at("/site").atMost(number, j.limit("most")))
                .build();
        return RuleExamples.of(new MadePack(List.of(rule)), MadePack.RULE, Samples.SHORT);
    }
}
