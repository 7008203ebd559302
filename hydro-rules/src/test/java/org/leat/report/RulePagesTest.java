package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;
import org.leat.file.DesignReader;
import org.leat.file.Position;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.report.testing.RuleTestKit;
import org.leat.settings.SettingsFiles;

/**
 * The rule reference in the docs is made from the rules and from the designs that break them; with
 * {@code -Dleat.write-docs=true} it is written again.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RulePagesTest {

    private static final Path DESIGNS = Path.of("src/test/resources/rules");
    private static final Path DEMOS = Path.of("../hydro-examples/designs");
    private static final Path EXAMPLES = Path.of("src/main/resources/org/leat/pack/examples");
    private static final Path PAGES = Path.of("../docs/rules");
    private static final int LONGEST = 14;
    private static final boolean WRITE = Boolean.getBoolean("leat.write-docs");

    private final BuiltInPack pack = new BuiltInPack();
    private final Checker checker = Checker.of(List.of(pack));
    private final Rulebook rulebook = checker.rulebook();
    private final FindingText words = new FindingText(new Wording(rulebook), Colours.NONE);
    private final Map<String, String> examples = new TreeMap<>();

    private record Failing(Reading reading, Finding finding) {}

    @BeforeAll
    void find_a_failing_design_for_each_rule() throws IOException {
        List<Path> files = new ArrayList<>(RuleTestKit.designs(DESIGNS));
        try (Stream<Path> demos = Files.list(DEMOS)) {
            demos.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(files::add);
        }
        Map<String, Failing> found = new TreeMap<>();
        Map<String, Failing> elsewhere = new TreeMap<>();
        for (Path file : files) {
            Reading reading =
                    DesignReader.read(Files.readString(file), file.getFileName().toString());
            Report report = checker.check(reading);
            for (Finding finding : report.worstFirst(Kind.FAIL)) {
                String rule = finding.outcome().rule();
                boolean own = file.toString().replace('\\', '/').contains("/" + rule);
                (own ? found : elsewhere).putIfAbsent(rule, new Failing(reading, finding));
            }
        }
        elsewhere.forEach(found::putIfAbsent);
        found.forEach((rule, failing) -> examples.put(rule, markdown(failing)));
    }

    private String markdown(Failing failing) {
        Finding finding = failing.finding();
        List<String> lines = new ArrayList<>();
        String path = finding.outcome().path();
        if (!path.equals("/")) {
            lines.add("At `" + path.substring(1) + "`:");
            lines.add("");
            lines.add("```yaml");
            lines.addAll(excerpt(failing.reading().text(), finding.position()));
            lines.add("```");
            lines.add("");
        }
        lines.add("What the check says of it:");
        lines.add("");
        lines.add("```text");
        // without the place in a file that the reader does not have
        words.full(finding).forEach(line -> lines.add(line.replace("  at " + finding.position(), "")));
        lines.add("```");
        return String.join("\n", lines);
    }

    /** The element's lines as far as they are not too many, moved to the left. */
    private static List<String> excerpt(String text, Position at) {
        List<String> all = text.lines().toList();
        int end = at.endColumn() == 1 ? at.endLine() - 1 : at.endLine();
        List<String> lines =
                new ArrayList<>(all.subList(at.line() - 1, Math.min(all.size(), Math.max(end, at.line()))));
        while (lines.get(lines.size() - 1).isBlank()) {
            lines.remove(lines.size() - 1);
        }
        boolean cut = lines.size() > LONGEST;
        List<String> kept = cut ? lines.subList(0, LONGEST - 1) : lines;
        int indent = kept.stream()
                .filter(line -> !line.isBlank())
                .mapToInt(line -> line.length() - line.stripLeading().length())
                .min()
                .orElse(0);
        List<String> moved = kept.stream()
                .map(line -> line.isBlank() ? "" : line.substring(indent))
                .collect(Collectors.toCollection(ArrayList::new));
        if (cut) {
            moved.add("# and so on");
        }
        return moved;
    }

    private String page(RuleInForce rule) {
        return RulePage.of(rule, examples.get(rule.card().id()));
    }

    @Test
    void every_rule_has_an_example_that_fails() {
        assertThat(examples.keySet())
                .containsAll(rulebook.rules().stream().map(r -> r.card().id()).toList());
    }

    @Test
    void the_program_knows_the_examples() throws IOException {
        Map<String, String> files = new TreeMap<>();
        examples.forEach((rule, example) -> files.merge(
                rule.substring(0, rule.indexOf('/')) + ".md",
                "# " + rule + "\n\n" + example + "\n",
                (x, y) -> x + "\n" + y));
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = EXAMPLES.resolve(file.getKey());
            if (WRITE) {
                Files.createDirectories(EXAMPLES);
                Files.writeString(path, file.getValue());
            }
            assertThat(Files.readString(path)).as(file.getKey()).isEqualTo(file.getValue());
        }
        if (!WRITE) {
            assertThat(pack.examples()).isEqualTo(examples);
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
