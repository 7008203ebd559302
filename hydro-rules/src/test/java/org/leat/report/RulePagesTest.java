package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Checker;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;
import org.leat.pack.BuiltInPack;
import org.leat.settings.SettingsFiles;

/**
 * The rule reference in the docs is made from the rules and from their examples that fail; with
 * {@code -Dleat.write-docs=true} it is written again.
 */
class RulePagesTest {

    private static final Path PAGES = Path.of("../docs/rules");
    private static final boolean WRITE = Boolean.getBoolean("leat.write-docs");

    private final BuiltInPack pack = new BuiltInPack();
    private final Checker checker = Checker.of(List.of(pack));
    private final Rulebook rulebook = checker.rulebook();
    private final Map<String, String> examples = pack.examples();

    private String page(RuleInForce rule) {
        return RulePage.of(rule, examples.get(rule.card().id()));
    }

    @Test
    void every_rule_has_an_example_that_fails_and_says_what_is_found_in_it() {
        for (RuleInForce rule : rulebook.rules()) {
            String id = rule.card().id();
            assertThat(examples.get(id)).as(id).contains("```yaml\n", "What the check says of it:", " " + id + "  ");
        }
    }

    @Test
    void the_reference_holds_a_page_for_every_rule_and_no_other() throws IOException {
        Map<Path, String> pages = new TreeMap<>();
        for (RuleInForce rule : rulebook.rules()) {
            pages.put(PAGES.resolve(rule.card().id() + ".md"), page(rule));
        }
        pages.put(PAGES.resolve("README.md"), index());
        if (WRITE) {
            for (Map.Entry<Path, String> page : pages.entrySet()) {
                Files.createDirectories(Objects.requireNonNull(page.getKey().getParent()));
                Files.writeString(page.getKey(), page.getValue());
            }
        }
        try (Stream<Path> files = Files.walk(PAGES)) {
            assertThat(files.filter(Files::isRegularFile)).containsExactlyInAnyOrderElementsOf(pages.keySet());
        }
        for (Map.Entry<Path, String> page : pages.entrySet()) {
            assertThat(Files.readString(page.getKey()))
                    .as(page.getKey().toString())
                    .isEqualTo(page.getValue());
        }
    }

    @Test
    void what_a_page_puts_into_a_settings_file_is_read_and_changes_nothing(@TempDir Path folder) throws IOException {
        StringBuilder text = new StringBuilder("format: 1\nrules:\n");
        for (RuleInForce rule : rulebook.rules()) {
            String page = page(rule);
            String yaml = page.substring(page.indexOf("rules:\n", page.indexOf("## In a settings file")) + 7);
            text.append(yaml, 0, yaml.indexOf("```"));
        }
        Path file = Files.writeString(folder.resolve("all.yaml"), text);
        SettingsFiles files = SettingsFiles.read(file);
        assertThat(files.problems()).isEmpty();
        SettingsFiles.Taken taken =
                files.settings(rulebook.rules().stream().map(RuleInForce::card).toList());
        assertThat(taken.problems()).isEmpty();
        Rulebook changed = Checker.of(List.of(pack), taken.settings()).rulebook();
        assertThat(changed.rules()).hasSameSizeAs(rulebook.rules());
        for (RuleInForce rule : changed.rules()) {
            RuleInForce own = rulebook.rule(rule.card().id());
            assertThat(rule.level()).isEqualTo(own.level());
            rule.limits()
                    .forEach((name, limit) -> assertThat(limit.value())
                            .as(rule.card().id() + " " + name)
                            .isCloseTo(own.limits().get(name).value(), withinPercentage(1e-3)));
        }
    }

    private String index() {
        StringBuilder out = new StringBuilder("""
                # The rules

                Every rule of the built-in pack, one page each, made from the rules themselves: what is judged and why, how it is
                computed, by which limit and source, a design that fails and what is said of it, and how a settings file changes it.
                `leat explain RULE` prints the same page, with the limits in force.
                """);
        String component = "";
        for (RuleInForce rule : rulebook.rules()) {
            String id = rule.card().id();
            String own = id.substring(0, id.indexOf('/'));
            if (!own.equals(component)) {
                out.append("\n## ").append(own).append("\n\n| rule | a failure is | judges |\n|---|---|---|\n");
                component = own;
            }
            out.append("| [").append(id).append("](").append(id).append(".md) | ");
            out.append(levels(rule)).append(" | ").append(rule.card().title()).append(" |\n");
        }
        return out.toString();
    }

    private static String levels(RuleInForce rule) {
        String usual = rule.level().word();
        String worst = rule.card().worst().word();
        return usual.equals(worst) ? usual : usual + " or " + worst;
    }
}
