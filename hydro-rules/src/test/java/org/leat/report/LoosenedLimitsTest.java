package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Settings;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.RuleSettings;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.report.TextWriter.Colours;

/** A limit that protects people, moved to the unsafe side: every format says so before anything else. */
class LoosenedLimitsTest {

    private static final Grounds ANSWERED = new Grounds("house.yaml:3", "our own bursts", "A. Example", true);
    private static final String SAID =
            "penstock/hose-rating  limit ratio 2, the rule's own is 3  house.yaml:3: our own bursts (A. Example accepts the"
                    + " danger)";

    private static Settings ratio(double value, Grounds grounds) {
        return new Settings(Map.of(
                "penstock/hose-rating",
                new RuleSettings(Map.of("ratio", new LimitChange(value, grounds)), null, null)));
    }

    private static Checker loosened() {
        return Checker.of(List.of(new BuiltInPack()), ratio(2, ANSWERED));
    }

    private static Report report(Checker checker) {
        return checker.check(DesignReader.read(Path.of("../hydro-examples/designs/rowan-ghyll.yaml")));
    }

    private static String written(ReportWriter writer, StringBuilder out) throws IOException {
        writer.add(report(loosened()));
        writer.end();
        return out.toString();
    }

    @Test
    void text_says_it_first_and_in_its_last_line() throws IOException {
        StringBuilder out = new StringBuilder();
        String text = written(new TextWriter(loosened().rulebook(), out, Colours.NONE), out);
        assertThat(text.replaceAll("\\s+", " "))
                .startsWith("Off, played down or loosened by settings, and can hurt someone "
                        + SAID.replaceAll("\\s+", " "))
                .endsWith("Settings loosen what protects people: penstock/hose-rating. ");
    }

    @Test
    void json_and_sarif_say_it_before_the_first_result() throws IOException {
        StringBuilder json = new StringBuilder();
        String report = written(new JsonWriter(loosened().rulebook(), json), json);
        assertThat(report.indexOf(SAID)).isPositive().isLessThan(report.indexOf("\"rules\""));
        StringBuilder sarif = new StringBuilder();
        String log = written(new SarifWriter(loosened().rulebook(), sarif, "1", false), sarif);
        assertThat(log.indexOf(SAID)).isPositive().isLessThan(log.indexOf("\"results\""));
        assertThat(log).contains("toolConfigurationNotifications", "settings-loosen");
    }

    @Test
    void markdown_and_junit_say_it_before_the_first_finding() throws IOException {
        StringBuilder markdown = new StringBuilder();
        String comment = written(new MarkdownWriter(loosened().rulebook(), markdown), markdown);
        assertThat(comment.indexOf("A. Example accepts the danger"))
                .isPositive()
                .isLessThan(comment.indexOf("| design |"));
        StringBuilder xml = new StringBuilder();
        String suites = written(new JUnitWriter(loosened().rulebook(), xml, Level.ERROR), xml);
        assertThat(suites.indexOf("limit ratio 2")).isPositive().isLessThan(suites.indexOf("penstock/static-pressure"));
        assertThat(suites).contains("skipped=\"1\"");
    }

    @Test
    void a_stricter_limit_is_told_among_the_changes_only() throws IOException {
        Checker stricter = Checker.of(List.of(new BuiltInPack()), ratio(4, Grounds.of("house.yaml:3", "sure")));
        StringBuilder out = new StringBuilder();
        TextWriter writer = new TextWriter(stricter.rulebook(), out, Colours.NONE);
        writer.add(report(stricter));
        writer.end();
        assertThat(out.toString()).contains("Changed by settings").doesNotContain("loosen");
    }

    @Test
    void no_checker_is_made_where_nobody_answers_or_a_factor_falls_below_one() {
        for (Settings settings : List.of(
                ratio(2, Grounds.of("us", "why")),
                ratio(2, new Grounds("us", "why", "A. Example", false)),
                ratio(0.9, ANSWERED))) {
            assertThatIllegalArgumentException().isThrownBy(() -> Checker.of(List.of(new BuiltInPack()), settings));
        }
    }
}
