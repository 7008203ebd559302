package org.leat.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.leat.check.Kind;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;

/**
 * Drafts what the examples of the rules that are named expect, and tells their author in one go what was written where and what is to
 * be put right. It always fails: what was drafted is for a person to judge.
 */
@EnabledIfSystemProperty(named = "leat.draft-expectations", matches = ".*/.*")
class DraftedExpectationsTest {

    private static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();

    private final RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);
    private final Map<String, List<String>> written = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();

    @Test
    void what_was_drafted_is_looked_at_line_by_line() throws IOException {
        List<Example> asked = PackExamples.asked();
        for (Example example : asked) {
            draft(example);
        }
        Set<String> rules = asked.stream()
                .filter(example -> !example.listed().isEmpty())
                .map(Example::rule)
                .collect(Collectors.toCollection(TreeSet::new));
        List<Example> drafted = RuleTestKit.examples(PackExamples.FOLDER).stream()
                .filter(example -> rules.contains(example.rule()))
                .toList();
        RuleTestKit.withoutExample(rules, drafted)
                .forEach((rule, kinds) -> wrong.add(rule + " has no example of "
                        + kinds.stream().map(Kind::word).collect(Collectors.joining(", "))));
        for (Example example : drafted) {
            fails(example);
        }
        throw told();
    }

    private void draft(Example example) throws IOException {
        String before = Files.readString(example.file());
        List<String> differences = kit.differences(example);
        if (before.equals(Files.readString(example.file()))) {
            differences.forEach(difference -> wrong.add(example.id() + ": " + difference));
        } else {
            String file = ROOT.relativize(example.file().toAbsolutePath().normalize())
                    .toString()
                    .replace('\\', '/');
            written.computeIfAbsent(file, none -> new ArrayList<>()).add(example.name());
        }
    }

    /** What {@link OnlyItsRuleTest} asks of all. */
    private void fails(Example example) throws IOException {
        if (example.name().startsWith("fails")) {
            Set<String> failed = new TreeSet<>(OnlyItsRuleTest.failed(kit, example));
            failed.removeAll(OnlyItsRuleTest.tied(example));
            if (!failed.remove(example.rule())) {
                wrong.add(example.id() + " does not fail its rule");
            }
            if (!failed.isEmpty()) {
                wrong.add(example.id() + " fails also " + String.join(", ", failed));
            }
        }
    }

    /** Without a trace: nobody asks where in this class it comes from. */
    private AssertionError told() {
        StringBuilder text = new StringBuilder(
                written.isEmpty() ? "nothing was drafted" : "drafted, look at every line before you keep it:");
        written.forEach((file, examples) ->
                text.append("\n  ").append(file).append(": ").append(String.join(", ", examples)));
        if (!wrong.isEmpty()) {
            text.append("\nto be put right:");
            wrong.forEach(one -> text.append("\n  ").append(one));
        }
        AssertionError told = new AssertionError(text.toString());
        told.setStackTrace(new StackTraceElement[0]);
        return told;
    }
}
