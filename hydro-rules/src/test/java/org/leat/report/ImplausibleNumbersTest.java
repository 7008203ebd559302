package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.report.TextWriter.Colours;

/** Numbers that cannot be meant come first, and colour all that follows. */
class ImplausibleNumbersTest {

    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));
    private static final Path SOUND = Path.of("../hydro-examples/designs/rowan-ghyll.yaml");

    private static Report report(String from, String to) throws IOException {
        String text = Files.readString(SOUND);
        assertThat(text).contains(from);
        Reading reading = DesignReader.read(text.replace(from, to), "f.yaml");
        assertThat(reading.problems()).isEmpty();
        return CHECKER.check(reading);
    }

    private static Report wheel() throws IOException {
        return report("pitch-diameter: 180 mm", "pitch-diameter: 140 m");
    }

    private static String written(ReportWriter writer, StringBuilder out, Report report) throws IOException {
        writer.add(report);
        writer.end();
        return out.toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pitch-diameter: 180 mm | pitch-diameter: 140 m | plausibility/sizes | ERROR",
                "gross-head: 32 m ± 0.3 m | gross-head: { kind: gauge, pressure: 14 bar } | plausibility/pipe-over-fall | ERROR",
                "gross-head: 32 m ± 0.3 m | gross-head: { kind: gauge, pressure: 1.4 psi } | plausibility/sizes | WARNING",
                "gross-head: 32 m ± 0.3 m | gross-head: 200 m | plausibility/pipe-over-fall | ERROR",
                "cells-in-series: 8 | cells-in-series: 80 | plausibility/sizes | WARNING",
            })
    void what_cannot_be_meant_stands_before_all_other_failures(String from, String to, String rule, Level level)
            throws IOException {
        Report report = report(from, to);
        List<Finding> failures = report.worstFirst(Kind.FAIL);
        int doubts = (int) failures.stream().filter(Finding::doubtsInput).count();
        assertThat(failures.subList(0, doubts)).allMatch(Finding::doubtsInput).anySatisfy(first -> {
            assertThat(first.outcome().rule()).isEqualTo(rule);
            assertThat(first.outcome().level()).isEqualTo(level);
        });
        assertThat(report.judgedOn().isEmpty()).isEqualTo(level != Level.ERROR);
    }

    @Test
    void a_sound_plant_is_judged_on_what_it_is() {
        assertThat(CHECKER.check(DesignReader.read(SOUND)).judgedOn()).isEmpty();
    }

    @Test
    void text_says_it_before_the_first_failure_and_over_each_table() throws IOException {
        StringBuilder out = new StringBuilder();
        String text = written(new TextWriter(CHECKER.rulebook(), out, Colours.NONE), out, wheel());
        String said = "All that follows is judged on runner.pitch-diameter of 140 m, which cannot be meant.";
        assertThat(text.indexOf(said)).isPositive().isLessThan(text.indexOf("plausibility/sizes"));
        assertThat(text)
                .contains(
                        "Is 140 m at runner.pitch-diameter meant as 140 mm?",
                        "How it runs, judged on runner.pitch-diameter of 140 m",
                        "Tightest of what holds, judged on runner.pitch-diameter of 140 m");
    }

    @Test
    void every_other_format_says_it_too() throws IOException {
        StringBuilder json = new StringBuilder();
        assertThat(written(new JsonWriter(CHECKER.rulebook(), json), json, wheel()))
                .contains("\"judgedOn\"", "runner.pitch-diameter of 140 m");
        StringBuilder sarif = new StringBuilder();
        assertThat(written(new SarifWriter(CHECKER.rulebook(), sarif, "1", false), sarif, wheel()))
                .contains("cannot-be-meant", "is judged on runner.pitch-diameter of 140 m");
        StringBuilder markdown = new StringBuilder();
        String comment = written(new MarkdownWriter(CHECKER.rulebook(), markdown), markdown, wheel());
        assertThat(comment.indexOf("### Cannot be meant")).isPositive().isLessThan(comment.indexOf("| design |"));
        StringBuilder xml = new StringBuilder();
        String suites = written(new JUnitWriter(CHECKER.rulebook(), xml, Level.ERROR), xml, wheel());
        assertThat(suites.indexOf("judged on runner.pitch-diameter of 140 m"))
                .isPositive()
                .isLessThan(suites.indexOf("alternator/cut-in"));
    }
}
