package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Checker;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.pack.BuiltInPack;

/**
 * Every example of a built-in rule, checked by that rule alone: no rule lives from another. {@link ChangedRulesTest} builds on
 * it.
 */
class RuleAloneTest {

    private static final BuiltInPack PACK = new BuiltInPack();
    private static final Path FOLDER = Path.of("../src/main/resources/org/leat/pack");
    private static final String MORE = ": way out not expected: ";

    /** Examples in which another rule refuses a way out, so that a rule by itself offers more. */
    private static final Set<String> REFUSED = Set.of(
            "battery/bus-voltage-match:fails",
            "nozzle/set-covers-stream:fails-in-the-year",
            "protection/continuous-load:fails-thin-cable",
            "protection/selectivity:fails",
            "runner/printed-material:fails",
            "runner/speed-ratio:fails");

    record Alone(Rule rule) implements RulePack {

        @Override
        public String name() {
            return "alone";
        }

        @Override
        public List<Rule> rules() {
            return List.of(rule);
        }
    }

    static Stream<Rule> rules() {
        return PACK.rules().stream();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_rule_finds_by_itself_what_it_finds_among_the_others(Rule rule) throws IOException {
        Path component = FOLDER.resolve(rule.id()).getParent();
        List<Example> examples =
                RuleTestKit.examples(Objects.requireNonNull(component), FOLDER.resolve("bases")).stream()
                        .filter(example -> example.rule().equals(rule.id()))
                        .toList();
        Checker checker = Checker.of(List.of(new Alone(rule)));
        Map<String, List<String>> differences = new TreeMap<>();
        for (Example example : examples) {
            List<Told> expected = Objects.requireNonNull(example.expected()).stream()
                    .filter(told -> told.rule().equals(rule.id()))
                    .toList();
            List<Told> found = new Telling(checker.rulebook()).of(new RuleTestKit(checker).check(example));
            List<String> of = Differences.of(expected, found);
            if (!(REFUSED.contains(example.id()) ? onlyMore(of) : of.isEmpty())) {
                differences.put(example.id(), of);
            }
        }
        assertThat(examples).hasSizeGreaterThan(2);
        assertThat(differences).isEmpty();
    }

    private static boolean onlyMore(List<String> differences) {
        return !differences.isEmpty() && differences.stream().allMatch(difference -> difference.contains(MORE));
    }
}
