package org.leat.rulefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Samples;
import org.leat.check.testing.RuleExamples;
import org.leat.rulefile.RuleFile.RuleFileReading;

/** A plant that cannot be solved passes no rule of a file, whatever number of a section it asks for. */
class UnsolvedPlantTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    a head of the site | {at: /site, value: site.grossHead, at-most: 100.m()}
                    a section's pressure | {for-each: penstock.sections, must: each.staticPressure <= bar(4)}
                    a section's speed | {for-each: penstock.sections, must: each.velocity <= m_per_s(3)}
                    """)
    void a_head_that_the_readings_do_not_give_is_open_and_no_head_of_nought(String what, String decides) {
        String fields =
                decides.substring(1, decides.length() - 1).replace(", ", "\n").indent(4);
        RuleFileReading reading = RuleFile.read("""
                format: 1
                name: test
                rules:
                  - id: test/one
                    level: warning
                    title: t
                    why: w
                    source: s
                    judged: j
                    fails: "no"
                """ + fields, "rules.yaml");
        assertThat(reading.problems()).isEmpty();
        RuleExamples rule = RuleExamples.of(Objects.requireNonNull(reading.pack()), "test/one", Samples.SHORT);
        rule.passes();
        assertThat(rule.with(
                                "gross-head: 24 m",
                                "gross-head: { kind: gauge, pressure: 0.1 bar, gauge-above-nozzle: -2 m }")
                        .open("/site/gross-head"))
                .as(what)
                .hasSize(1);
    }
}
