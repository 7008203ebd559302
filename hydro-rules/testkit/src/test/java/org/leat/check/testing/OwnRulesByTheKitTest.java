package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Checker;
import org.leat.check.PackJar;
import org.leat.check.RulePack;
import org.leat.check.Samples;
import org.leat.docs.OwnRulesPage;

/** The rule printed in the docs, tested as the docs say. */
class OwnRulesByTheKitTest {

    @TempDir
    Path folder;

    /** Does something with the pack that the docs print. */
    private interface Use {
        void of(RulePack pack) throws Exception;
    }

    private void withThePack(Use use) throws Exception {
        Path classes = PackJar.compile(folder, "example.HillPack", OwnRulesPage.source());
        try (URLClassLoader loader = new URLClassLoader(
                new URL[] {classes.toUri().toURL()}, getClass().getClassLoader())) {
            use.of((RulePack) loader.loadClass("example.HillPack")
                    .getDeclaredConstructor()
                    .newInstance());
        }
    }

    @Test
    void the_worked_example_is_tested_in_one_line_each() throws Exception {
        withThePack(pack -> {
            RuleExamples rule = RuleExamples.of(pack, "hill/standing-pressure", Samples.SHORT);
            assertThat(rule.passes()).singleElement().asString().contains("bar");
            assertThat(rule.with("gross-head: 24 m", "gross-head: 60 m").fails())
                    .singleElement()
                    .asString()
                    .contains("run stands at", "4 bar", "call the pipe maker");
            assertThatThrownBy(rule::fails).isInstanceOf(AssertionError.class).hasMessageContaining("should fail");
        });
    }

    @Test
    void the_file_of_examples_in_the_docs_is_found_to_be_what_it_expects(@TempDir Path examples) throws Exception {
        Matcher m = Pattern.compile("```yaml\n(rule: hill/standing-pressure\n.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("../../docs/own-rules.md")));
        assertThat(m.find()).isTrue();
        Files.writeString(examples.resolve("standing-pressure.yaml"), m.group(1));
        Files.writeString(examples.resolve("sample.yaml"), Samples.SHORT);
        withThePack(pack -> {
            RuleTestKit kit = new RuleTestKit(Checker.of(List.of(pack)), Drafts.NONE);
            assertThat(RuleTestKit.examples(examples))
                    .hasSize(2)
                    .allSatisfy(example -> assertThat(kit.differences(example)).isEmpty());
        });
    }
}
