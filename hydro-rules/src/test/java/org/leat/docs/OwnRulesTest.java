package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

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
}
