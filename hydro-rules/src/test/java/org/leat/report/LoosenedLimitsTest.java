package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Settings;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.RuleSettings;
import org.leat.choice.PartsFront;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.page.PageIndex;
import org.leat.page.PageWriter;
import org.leat.page.PartsPage;
import org.leat.page.StartPage;
import org.leat.prices.PriceList;
import org.leat.report.TextWriter.Colours;
import org.leat.report.mending.MendedText;

/** A limit that protects people, moved to the unsafe side: every format says so before anything else. */
class LoosenedLimitsTest {

    private static final Grounds ANSWERED = new Grounds("house.yaml:3", "our own bursts", "A. Example", true);
    private static final String SAID =
            "penstock/hose-rating  limit ratio 2, the rule's own is 3  house.yaml:3: our own bursts (A. Example accepts the"
                    + " danger)";

    private static final String LAST = "Settings loosen what protects people: penstock/hose-rating.";

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
    void a_page_and_the_index_of_pages_say_it_before_the_first_list_and_last() throws IOException {
        StringBuilder html = new StringBuilder();
        String page = written(new PageWriter(loosened().rulebook(), html), html);
        PageIndex index = new PageIndex(loosened().rulebook());
        index.add(report(loosened()), "a.html");
        for (String one : List.of(page, index.written())) {
            assertThat(one.indexOf(SAID)).isPositive().isLessThan(one.indexOf("<table"));
            assertThat(lastWords(one)).endsWith(LAST);
        }
    }

    @Test
    void the_sheet_of_a_first_start_says_it_first_and_last() throws IOException {
        Report report = report(loosened());
        StartSheet sheet = new StartSheet(loosened().rulebook());
        StringBuilder text = new StringBuilder();
        sheet.text(report, List.of(), text);
        assertThat(text.toString().replaceAll("\\s+", " "))
                .startsWith(SettingsText.LOOSENED + " " + SAID.replaceAll("\\s+", " "))
                .endsWith(LAST + " ");
        StringBuilder json = new StringBuilder();
        sheet.json(report, List.of(), json);
        assertThat(json.indexOf(SAID)).isPositive().isLessThan(json.indexOf("\"design\""));
        StringBuilder html = new StringBuilder();
        new StartPage(loosened().rulebook()).write(report, List.of(), html);
        assertThat(html.indexOf(SAID)).isPositive().isLessThan(html.indexOf("Stop: shut the water"));
        assertThat(lastWords(html.toString())).endsWith(LAST);
    }

    @Test
    void what_is_mended_and_what_is_worth_buying_are_told_behind_it_and_before_it() throws IOException {
        StringBuilder mended = new StringBuilder();
        MendedText changes = new MendedText(loosened().rulebook(), mended);
        changes.begin();
        changes.say("nothing");
        changes.end();
        assertThat(mended.toString().replaceAll("\\s+", " "))
                .startsWith(SettingsText.LOOSENED + " " + SAID.replaceAll("\\s+", " "))
                .endsWith("nothing " + LAST + " ");
        PartsFront none = new PartsFront(
                List.of(), PartsFront.End.WHOLE, 1, 0, 0, 0, null, OptionalDouble.empty(), OptionalInt.of(0), null);
        PartsWriter.Subject subject =
                new PartsWriter.Subject("a.yaml", "p.yaml", new PriceList("EUR", List.of()), "a year");
        PartsWriter writer = new PartsWriter(loosened().rulebook(), subject);
        StringBuilder front = new StringBuilder();
        writer.text(none, front);
        StringBuilder least = new StringBuilder();
        writer.mended(none, least);
        for (StringBuilder one : List.of(front, least)) {
            assertThat(one.toString().replaceAll("\\s+", " "))
                    .startsWith(SettingsText.LOOSENED + " " + SAID.replaceAll("\\s+", " "))
                    .endsWith(LAST + " ");
        }
        StringBuilder json = new StringBuilder();
        writer.json(none, json);
        assertThat(json.indexOf(SAID)).isPositive().isLessThan(json.indexOf("\"design\""));
        String page = new PartsPage(loosened().rulebook(), subject).written(none, "a");
        assertThat(page.indexOf(SAID)).isPositive().isLessThan(page.indexOf("What was found"));
        assertThat(lastWords(page)).endsWith(LAST);
    }

    private static String lastWords(String page) {
        return page.replaceAll("<[^>]*>", " ").strip();
    }

    @Test
    void nothing_is_said_where_nothing_is_loosened() throws IOException {
        Checker plain = Checker.of(List.of(new BuiltInPack()));
        StringBuilder text = new StringBuilder();
        new StartSheet(plain.rulebook()).text(report(plain), List.of(), text);
        new StartPage(plain.rulebook()).write(report(plain), List.of(), text);
        MendedText changes = new MendedText(plain.rulebook(), text);
        changes.begin();
        changes.end();
        text.append(new PageIndex(plain.rulebook()).written());
        assertThat(text.toString()).doesNotContain("loosen").contains("First start");
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
