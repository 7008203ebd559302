package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Checker;
import org.leat.check.Rule;
import org.leat.pack.BuiltInPack;

/**
 * Examples of single steps in the built-in rules: a limit met, which of several is the worst, where a search for a way out
 * ends. Each is checked by its rule alone, so that there can be many; what is to be shown to readers is beside the rules.
 */
class EdgeExamplesTest {

    /** As beside the rules, a file for each rule that has any. */
    static final Path FOLDER = Path.of("src/test/resources/edges");

    static final Path BASES = Path.of("../src/main/resources/org/leat/pack/bases");

    private static final Map<String, Rule> RULES =
            new BuiltInPack().rules().stream().collect(Collectors.toMap(Rule::id, Function.identity()));

    private static final List<Example> ALL = read();

    private static List<Example> read() {
        try {
            return RuleTestKit.examples(FOLDER, BASES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Example> all() {
        return ALL;
    }

    static List<String> rules() {
        return ALL.stream().map(Example::rule).distinct().toList();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_rule_by_itself_finds_what_is_expected(String id) throws IOException {
        Rule rule = RULES.get(id);
        assertThat(rule).as(id).isNotNull();
        RuleTestKit kit = new RuleTestKit(Checker.of(List.of(new RuleAloneTest.Alone(rule))));
        Map<String, List<String>> differences = new TreeMap<>();
        for (Example example : ALL) {
            if (example.rule().equals(id)) {
                differences.put(example.id(), kit.differences(example));
            }
        }
        differences.values().removeIf(List::isEmpty);
        assertThat(differences).isEmpty();
    }

    @Test
    void a_file_is_named_for_its_rule() {
        assertThat(ALL)
                .allSatisfy(example -> assertThat(example.file()).isEqualTo(FOLDER.resolve(example.rule() + ".yaml")));
    }
}
