package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.PackJar;
import org.leat.check.RulePack;
import org.leat.check.Samples;
import org.leat.docs.OwnRulesPage;

/** The rule printed in the docs, tested as the docs say. */
class OwnRulesByTheKitTest {

    @TempDir
    Path folder;

    @Test
    void the_worked_example_is_tested_in_one_line_each() throws Exception {
        Path classes = PackJar.compile(folder, "example.HillPack", OwnRulesPage.source());
        try (URLClassLoader loader = new URLClassLoader(
                new URL[] {classes.toUri().toURL()}, getClass().getClassLoader())) {
            RulePack pack = (RulePack) loader.loadClass("example.HillPack")
                    .getDeclaredConstructor()
                    .newInstance();
            RuleExamples rule = RuleExamples.of(pack, "hill/standing-pressure", Samples.SHORT);
            assertThat(rule.passes()).singleElement().asString().contains("bar");
            assertThat(rule.with("gross-head: 24 m", "gross-head: 60 m").fails())
                    .singleElement()
                    .asString()
                    .contains("run stands at", "4 bar", "call the pipe maker");
            assertThatThrownBy(rule::fails).isInstanceOf(AssertionError.class).hasMessageContaining("should fail");
        }
    }
}
