package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Checker;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.pack.BuiltInPack;

/**
 * Every example of a built-in rule, checked by that rule alone: no rule lives from another. A fault put into a rule is
 * asked of the examples of that rule only here, so this is the class that a mutation run asks.
 */
class RuleAloneTest {

    private static final List<Example> EXAMPLES = read();
    private static final BuiltInPack PACK = new BuiltInPack();
    private static final String MORE = ": way out not expected: ";

    /** Examples in which another rule refuses a way out, so that a rule by itself offers more. */
    private static final Set<String> REFUSED = Set.of(
            "protection/continuous-load:fails-thin-cable", "runner/printed-material:fails", "runner/speed-ratio:fails");

    private record Alone(Rule rule) implements RulePack {

        @Override
        public String name() {
            return "alone";
        }

        @Override
        public List<Rule> rules() {
            return List.of(rule);
        }
    }

    private static List<Example> read() {
        try {
            return RuleTestKit.examples(Path.of("../src/main/resources/org/leat/pack"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<Example> examples() {
        return EXAMPLES.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void a_rule_finds_by_itself_what_it_finds_among_the_others(Example example) throws IOException {
        List<String> differences = alone(example);
        if (REFUSED.contains(example.id())) {
            assertThat(differences).isNotEmpty().allMatch(difference -> difference.contains(MORE));
        } else {
            assertThat(differences).isEmpty();
        }
    }

    private static List<String> alone(Example example) throws IOException {
        Rule rule = PACK.rules().stream()
                .filter(r -> r.id().equals(example.rule()))
                .findFirst()
                .orElseThrow();
        Checker checker = Checker.of(List.of(new Alone(rule)));
        List<Told> expected = Objects.requireNonNull(example.expected()).stream()
                .filter(told -> told.rule().equals(example.rule()))
                .toList();
        return Differences.of(expected, new Telling(checker.rulebook()).of(new RuleTestKit(checker).check(example)));
    }
}
