package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Checker;
import org.leat.check.Samples;

class DraftsTest {

    private static final String DRAFTED = """
                expect:
                  - made/rule: {kind: fail, level: warning, at: /site}
                    text: Something is wrong.
            """;
    private static final String WRONG = """
                expect:
                  - made/rule: {kind: pass, level: error, at: /site} # seen on site
                    text: All is well.
            """;
    private static final String MISSING = """
            # all examples of the rule
            rule: made/rule
            examples:
              first:
                why: for a test
                base: sample
                change: { /name: first }

              # the second of them
              second:
                why: for a test
                base: sample
                change:
                  /name: second
            """;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void a_base_design() throws IOException {
        Files.writeString(folder.resolve("sample.yaml"), Samples.SHORT);
        file = folder.resolve("file.yaml");
    }

    private static String with(String first, String second) {
        return MISSING.replace("first }\n", "first }\n" + first) + second;
    }

    private String afterRun(String wanted, String before) throws IOException {
        Files.writeString(file, before);
        run(wanted);
        return Files.readString(file);
    }

    private List<String> run(String wanted) throws IOException {
        MadePack pack = MadePack.of(j -> List.of(j.at("/site").says("wrong")));
        RuleTestKit kit = new RuleTestKit(Checker.of(List.of(pack)), Drafts.of(wanted));
        List<String> differences = new ArrayList<>();
        for (Example example : RuleTestKit.examples(folder)) {
            differences.addAll(kit.differences(example));
        }
        return differences;
    }

    @Test
    void an_expectation_that_is_missing_is_written_and_the_rest_of_the_file_stays() throws IOException {
        assertThat(afterRun("true", MISSING)).isEqualTo(with(DRAFTED, DRAFTED));
        assertThat(run("true")).isEmpty();
    }

    @Test
    void the_run_that_drafts_still_differs() throws IOException {
        Files.writeString(file, MISSING);
        assertThat(run("true")).hasSize(2).allSatisfy(d -> assertThat(d).contains("look at every line"));
    }

    @Test
    void an_expectation_that_is_there_is_never_touched_be_it_wrong() throws IOException {
        assertThat(afterRun("true", with(WRONG, WRONG))).isEqualTo(with(WRONG, WRONG));
        assertThat(run("true")).isNotEmpty();
        assertThat(afterRun("true", with(WRONG, ""))).isEqualTo(with(WRONG, DRAFTED));
    }

    @Test
    void an_empty_expectation_is_one_that_is_there() throws IOException {
        assertThat(afterRun("true", with("    expect: []\n", WRONG))).isEqualTo(with("    expect: []\n", WRONG));
    }

    @Test
    void one_that_is_named_is_written_anew_and_no_other() throws IOException {
        assertThat(afterRun("made/rule:first", with(WRONG, WRONG))).isEqualTo(with(DRAFTED, WRONG));
        assertThat(afterRun("made/rule:second", with(WRONG, WRONG))).isEqualTo(with(WRONG, DRAFTED));
        assertThat(afterRun("made/rule:second", with("", WRONG))).isEqualTo(with("", DRAFTED));
    }

    @Test
    void a_rule_that_is_named_drafts_what_is_missing_of_its_examples_and_leaves_what_is_there() throws IOException {
        assertThat(afterRun("made/rule", with("", WRONG))).isEqualTo(with(DRAFTED, WRONG));
        assertThat(afterRun("made/other", MISSING)).isEqualTo(MISSING);
    }

    @Test
    void a_rule_that_is_named_adds_its_findings_where_none_of_it_is_expected_and_touches_no_other_line()
            throws IOException {
        String wrong = """
                examples:
                  whole:
                    why: for a test
                    base: sample
                    rules: all
                    expect:
                      - a/first: {kind: pass, level: error, at: /site} # seen on site
                        text: All is well.
                """;
        String added = "      - made/rule: {kind: fail, level: warning, position: '4:3', at: /site}\n"
                + "        text: Something is wrong.\n";
        String after = wrong.replace(" # seen on site", "").replace("    expect:\n", "    expect:\n" + added);
        assertThat(afterRun("made/rule", wrong)).isEqualTo(after);
        assertThat(run("made/rule")).as("of a rule that is not run").hasSize(1);
        assertThat(afterRun("made/rule", after)).isEqualTo(after);
    }

    @Test
    void what_is_added_stands_where_the_report_tells_it() {
        Told first = new Told("a/first", Map.of("at", "/site"), "First.", List.of());
        Told wanted = new Told("made/rule", Map.of("at", "/site"), "Wanted.", List.of());
        Told last = new Told("b/last", Map.of("at", "/site"), "Last.", List.of());
        Told changed = new Told("a/first", Map.of("at", "/site"), "As it was.", List.of());
        Example example = new Example(
                file,
                "",
                "whole",
                "for a test",
                folder.resolve("sample.yaml"),
                List.of(),
                Set.of(),
                List.of(changed, last));
        assertThat(Drafts.of("made/rule").draft(example, List.of(first, wanted, last)))
                .hasValue(List.of(changed, wanted, last));
    }

    @Test
    void nothing_is_written_unless_it_is_asked_for() throws IOException {
        assertThat(afterRun("", MISSING)).isEqualTo(MISSING);
        assertThat(afterRun("false", MISSING)).isEqualTo(MISSING);
    }

    @Test
    void nothing_is_drafted_of_a_rule_that_breaks() throws IOException {
        Files.writeString(file, MISSING);
        MadePack broken = MadePack.of(j -> {
            throw new IllegalStateException("broken");
        });
        RuleTestKit kit = new RuleTestKit(Checker.of(List.of(broken)), Drafts.of("true"));
        assertThat(kit.differences(RuleTestKit.examples(folder).get(0))).contains("made/rule broke at /");
        assertThat(file).hasContent(MISSING);
    }
}
