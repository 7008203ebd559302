package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.check.Samples;
import org.leat.check.Settings;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.RuleSettings;
import org.leat.check.Settings.Switch;
import org.leat.pack.BuiltInPack;

/** Files of examples, and everything that must not let one pass. */
class RuleTestKitTest {

    private static final String FAILS = """
            rule: penstock/velocity
            examples:
              fails:
                why: Two wide nozzles.
                base: sample
                change:
                  /nozzles/open: [ 20 mm, 20 mm ]
                expect:
                  - penstock/velocity: {kind: fail, level: warning, at: '/penstock/sections[run]/pipe', case: running/20 + 20 mm, value: 3.14 m/s, limit: at most 3 m/s}
                    text: Water runs at 3.14 m/s in section run at 7.43 L/s; good is at most 3 m/s.
                    ways-out:
                      - text: Section run in 75 mm outside diameter.
                        watts: +354.4 W
                        edits: {'/penstock/sections[run]/pipe/outside-diameter': 75 mm}
                      - text: Nozzles of 18.5 mm in every open position.
                        watts: +74.4 W
                        edits: {/nozzles/open: '[18.5 mm, 18.5 mm]'}
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void a_base_design() throws IOException {
        Files.createDirectory(folder.resolve("bases"));
        Files.writeString(folder.resolve("bases/sample.yaml"), Samples.SHORT);
    }

    private List<String> differences(RulePack pack, String file) throws IOException {
        Files.writeString(folder.resolve("file.yaml"), file);
        RuleTestKit kit = new RuleTestKit(Checker.of(List.of(pack)), Drafts.NONE);
        return kit.differences(RuleTestKit.examples(folder).get(0));
    }

    private List<String> differences(String file) throws IOException {
        return differences(new BuiltInPack(), file);
    }

    private void refused(String file, String why) throws IOException {
        Files.writeString(folder.resolve("file.yaml"), file);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RuleTestKit.examples(folder))
                .withMessageContaining(why);
    }

    private static String example(String rest) {
        return "rule: made/rule\nexamples:\n  one:\n    why: for a test\n    base: sample\n" + rest.indent(4);
    }

    @Test
    void an_example_that_is_found_as_expected_has_no_difference() throws IOException {
        assertThat(differences(FAILS)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            kind: fail                | kind: open                | kind expected "open", found "fail"
            level: warning            | level: error              | level expected "error", found "warning"
            value: 3.14               | value: 3.15               | value expected "3.15 m/s", found "3.14 m/s"
            limit: at most 3          | limit: at most 4          | limit expected "at most 4 m/s", found "at most 3 m/s"
            text: Water runs          | text: Water walks         | text expected "Water walks
            text: Section run in 75   | text: Section run in 90   | way out not offered
            text: Section run in 75   | text: Section run in 90   | way out not expected
            watts: +354.4 W             | watts: +354.5 W             | way out not offered
            diameter': 75 mm          | diameter': 90 mm          | way out not offered
            case: running/20 + 20 mm   | case: running/20 mm       | not found: penstock/velocity at /penstock/sections[run]/pipe during running/20 mm
            case: running/20 + 20 mm   | case: running/20 mm       | not expected: penstock/velocity at /penstock/sections[run]/pipe during running/20 + 20 mm
            sections[run]/pipe',      | sections[run]',           | not found: penstock/velocity at /penstock/sections[run] during
            """)
    void whatever_is_told_otherwise_is_a_difference(String from, String to, String told) throws IOException {
        assertThat(FAILS).contains(from);
        assertThat(differences(FAILS.replace(from, to)))
                .anySatisfy(d -> assertThat(d).contains(told));
    }

    @Test
    void a_fact_or_a_way_out_that_is_left_unsaid_is_a_difference() throws IOException {
        assertThat(differences(FAILS.replace(", value: 3.14 m/s", "")))
                .singleElement()
                .asString()
                .contains("value");
        assertThat(differences(FAILS.substring(0, FAILS.indexOf("        ways-out"))))
                .hasSize(2)
                .allSatisfy(d -> assertThat(d).contains("way out not expected"));
    }

    @Test
    void a_finding_that_is_expected_twice_or_not_at_all_is_a_difference() throws IOException {
        String finding = FAILS.substring(FAILS.indexOf("      - penstock"));
        assertThat(differences(FAILS + finding)).singleElement().asString().startsWith("not found");
        assertThat(differences(FAILS.replace(finding, "      []\n")))
                .singleElement()
                .asString()
                .startsWith("not expected");
    }

    @Test
    void an_example_without_expectation_differs() throws IOException {
        assertThat(differences(FAILS.substring(0, FAILS.indexOf("    expect"))))
                .containsExactly("there is no expectation");
    }

    @Test
    void a_rule_that_is_not_run_differs() throws IOException {
        assertThat(differences(FAILS.replace("penstock/velocity", "penstock/velocities")))
                .contains("penstock/velocities is not run");
        assertThat(differences(FAILS.replace("    base:", "    rules: [penstock/velocities]\n    base:")))
                .contains("penstock/velocities is not run");
    }

    @Test
    void a_rule_that_is_switched_off_differs() throws IOException {
        Files.writeString(folder.resolve("file.yaml"), FAILS);
        Switch off = new Switch(true, Grounds.of("a test", "for a test"));
        Settings settings = new Settings(Map.of("penstock/velocity", new RuleSettings(Map.of(), null, off)));
        RuleTestKit kit = new RuleTestKit(Checker.of(List.of(new BuiltInPack()), settings), Drafts.NONE);
        assertThat(kit.differences(RuleTestKit.examples(folder).get(0))).contains("penstock/velocity is not run");
    }

    @Test
    void a_rule_that_breaks_or_says_nothing_differs_whatever_is_expected() throws IOException {
        String expected = example("""
                expect:
                  - made/rule: {kind: open, level: warning, at: /}
                    text: "The rule broke: java.lang.IllegalStateException: broken."
                """);
        MadePack broken = MadePack.of(j -> {
            throw new IllegalStateException("broken");
        });
        assertThat(differences(broken, expected)).containsExactly("made/rule broke at /");
        assertThat(differences(MadePack.of(j -> List.of()), expected)).containsExactly("made/rule broke at /");
    }

    @Test
    void a_sentence_with_a_placeholder_left_in_it_differs() throws IOException {
        Rule rule = Rule.of(MadePack.RULE, Level.WARNING, "a word")
                .why("For tests.")
                .formula("none")
                .judged("as it is")
                .source("common practice")
                .passes("fine", "Fine: {word}.")
                .judge(j -> j.at("/").with("word", "{value}").says("fine"))
                .build();
        assertThat(differences(new MadePack(List.of(rule)), example("""
                expect:
                  - made/rule: {kind: pass, level: warning, at: /}
                    text: 'Fine: {value}.'
                """)))
                .singleElement()
                .asString()
                .startsWith("a placeholder is not filled: made/rule");
    }

    @Test
    void what_the_base_suppresses_differs() throws IOException {
        Files.writeString(
                folder.resolve("bases/sample.yaml"),
                Samples.SHORT + "suppressions:\n  - rule: made/rule\n    at: site\n    reason: for a test\n");
        String expected = example("""
                expect:
                  - made/rule: {kind: fail, level: warning, at: /site}
                    text: Something is wrong.
                """);
        assertThat(differences(MadePack.of(j -> List.of(j.at("/site").says("wrong"))), expected))
                .containsExactly("made/rule is suppressed at /site");
    }

    @Test
    void findings_of_alternatives_are_expected_too() throws IOException {
        Files.writeString(
                folder.resolve("bases/sample.yaml"),
                Samples.SHORT + "alternatives:\n  - name: small\n    nozzles: { open: [8 mm] }\n");
        String expected = example("""
                expect:
                  - made/rule: {kind: pass, level: warning, at: /}
                    text: All is fine.
                """);
        MadePack fine = MadePack.of(j -> List.of(j.at("/").says("fine")));
        assertThat(differences(fine, expected))
                .singleElement()
                .asString()
                .startsWith("not expected: made/rule at / in alternative small");
    }

    @Test
    void a_change_that_changes_nothing_or_leads_nowhere_differs_and_is_located() throws IOException {
        assertThat(differences(FAILS.replace("[ 20 mm, 20 mm ]", "[ 10 mm ]")))
                .containsExactly("file.yaml:7:22: /nozzles/open: the same stands there already");
        assertThat(differences(FAILS.replace("/nozzles/open: [ 20 mm, 20 mm ]", "/nozzles/form: null")))
                .containsExactly("file.yaml:7:22: /nozzles/form: there is nothing to take out");
    }

    @Test
    void a_change_that_makes_no_design_differs_and_is_located_in_the_example() throws IOException {
        assertThat(differences(FAILS.replace("[ 20 mm, 20 mm ]", "[ 20 bar ]")))
                .singleElement()
                .asString()
                .startsWith("file.yaml:7:22: no design: /nozzles/open[0]: ");
    }

    @Test
    void a_file_that_is_not_of_the_form_is_refused_with_its_place() throws IOException {
        refused(FAILS.replace("    expect:", "    expects:"), "file.yaml:9:7: expects is not known here");
        refused(FAILS.replace("why: Two wide nozzles.", "why:"), "why is missing");
        refused(FAILS.replace("base: sample", "base: simple"), "there is no design simple.yaml");
        refused(FAILS.replace("    base: sample\n", ""), "base is missing");
        refused(FAILS.replace("rule: penstock/velocity\n", ""), "no rule is named");
        refused(FAILS.replace("- penstock/velocity", "- penstock/thrust"), "is not among the rules");
        refused(FAILS.replace("kind: fail, ", ""), "at least a kind");
        refused(FAILS.replace("at: '", "position: 1:1, at: '"), "a position is that of an unchanged file");
        refused(FAILS.replace("watts: +354.4 W", "watt: +354.4 W"), "watt is not known here");
        refused(FAILS + FAILS.substring(FAILS.indexOf("  fails:")), "fails is given twice");
        refused("rule: a/b\nexamples: {}\n", "there is no example");
        refused("rule: [a/b\nexamples:\n", "file.yaml:2");
    }

    @Test
    void a_design_that_no_example_uses_is_refused() throws IOException {
        Files.writeString(folder.resolve("stray.yaml"), Samples.SHORT);
        refused(FAILS, "stray.yaml");
        Files.delete(folder.resolve("stray.yaml"));
        Files.writeString(folder.resolve("bases/stray.yaml"), Samples.SHORT);
        refused(FAILS, "stray.yaml");
    }

    @Test
    void a_folder_without_an_example_is_refused(@TempDir Path empty) {
        assertThatIllegalArgumentException().isThrownBy(() -> RuleTestKit.examples(empty));
    }

    @Test
    void two_examples_of_one_name_are_refused() throws IOException {
        Files.writeString(folder.resolve("other.yaml"), FAILS);
        refused(FAILS, "two examples are called penstock/velocity:fails");
    }

    @Test
    void a_base_may_lie_beside_the_example_or_where_it_is_said_to_be(@TempDir Path elsewhere) throws IOException {
        Files.move(folder.resolve("bases/sample.yaml"), folder.resolve("sample.yaml"));
        assertThat(differences(FAILS)).isEmpty();
        Files.move(folder.resolve("sample.yaml"), elsewhere.resolve("sample.yaml"));
        RuleTestKit kit = new RuleTestKit(Checker.of(List.of(new BuiltInPack())), Drafts.NONE);
        assertThat(kit.differences(RuleTestKit.examples(folder, elsewhere).get(0)))
                .isEmpty();
    }

    @Test
    void the_position_in_an_unchanged_file_is_held_where_it_is_said() throws IOException {
        String expected = example("""
                expect:
                  - made/rule: {kind: pass, level: warning, position: 4:15, at: /site/gross-head}
                    text: All is fine.
                """);
        MadePack fine = MadePack.of(j -> List.of(j.at("/site/gross-head").says("fine")));
        assertThat(differences(fine, expected)).isEmpty();
        assertThat(differences(fine, expected.replace("4:15", "4:14")))
                .singleElement()
                .asString()
                .contains("position expected \"4:14\", found \"4:15\"");
    }

    @Test
    void what_a_rule_has_no_example_of_is_told() throws IOException {
        Files.writeString(folder.resolve("file.yaml"), FAILS);
        List<Example> examples = RuleTestKit.examples(folder);
        assertThat(RuleTestKit.withoutExample(List.of("penstock/velocity", "made/rule"), examples))
                .isEqualTo(Map.of(
                        "penstock/velocity",
                        Set.of(Kind.PASS, Kind.OPEN),
                        "made/rule",
                        Set.of(Kind.PASS, Kind.FAIL, Kind.OPEN)));
    }
}
