package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Checker;
import org.leat.check.PackJar;
import org.leat.check.Packs;
import org.leat.check.Report;
import org.leat.check.RulePack;
import org.leat.check.Samples;
import org.leat.pack.BuiltInPack;
import org.leat.report.testing.RuleExamples;

/** The rule printed in the docs, compiled and run as printed. */
class OwnRulesTest {

    @TempDir
    Path folder;

    @Test
    void the_worked_example_has_fewer_than_40_lines() throws Exception {
        assertThat(OwnRulesPage.source().lines().count()).isLessThan(40);
    }

    @Test
    void the_worked_example_compiles_into_a_jar_that_is_found_and_judges() throws Exception {
        Path jar = PackJar.jar(folder, "example.HillPack", OwnRulesPage.source());
        List<RulePack> packs = Packs.inJar(jar);
        assertThat(packs).extracting(RulePack::name).containsExactly("hill");
        Report report = Checker.of(List.of(new BuiltInPack(), packs.get(0))).check(Samples.reading());
        assertThat(report.findings())
                .filteredOn(f -> f.outcome().rule().equals("hill/standing-pressure"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.broke()).isFalse();
                    assertThat(f.outcome().path()).isEqualTo("/penstock/sections[run]");
                });
    }

    @Test
    void the_worked_example_is_found_on_a_class_path() throws Exception {
        Path jar = PackJar.jar(folder, "example.HillPack", OwnRulesPage.source());
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {jar.toUri().toURL()}, getClass().getClassLoader())) {
            assertThat(Packs.found(loader)).extracting(RulePack::name).contains("hill");
        }
    }

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
