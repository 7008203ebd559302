package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.check.Samples;
import org.leat.pack.BuiltInPack;

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
        for (String text : List.of("Too fast: {value}.", "Too fast, over {limit}.")) {
            RuleExamples rule =
                    RuleExamples.of(reworded("penstock/velocity.too-fast", text), "penstock/velocity", Samples.SHORT);
            assertThatThrownBy(() -> rule.with("[10 mm]", "[20 mm, 20 mm]").fails())
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining("does not name its");
        }
    }

    @Test
    void a_placeholder_that_nothing_fills_is_refused() {
        RuleExamples rule = RuleExamples.of(
                reworded("penstock/velocity.slow-enough", "Fine, {nothing}."), "penstock/velocity", Samples.SHORT);
        assertThatThrownBy(rule::passes).isInstanceOf(AssertionError.class).hasMessageContaining("is not filled");
    }

    private static RulePack reworded(String key, String text) {
        BuiltInPack pack = new BuiltInPack();
        Map<String, String> texts = new HashMap<>(pack.texts());
        texts.put(key, text);
        return new RulePack() {
            @Override
            public String name() {
                return "reworded";
            }

            @Override
            public List<Rule> rules() {
                return new ArrayList<>(pack.rules());
            }

            @Override
            public Map<String, String> texts() {
                return texts;
            }
        };
    }
}
