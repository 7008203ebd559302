package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Report;

class MarkdownWriterTest {

    private static String write(int times, Report... reports) throws IOException {
        StringBuilder out = new StringBuilder();
        MarkdownWriter writer = new MarkdownWriter(MadeReports.rulebook(), out);
        for (int i = 0; i < times; i++) {
            for (Report report : reports) {
                writer.add(report);
            }
        }
        writer.end();
        return out.toString();
    }

    @Test
    void the_worst_comes_first_folded_and_the_caution_last() throws IOException {
        String text = write(1, MadeReports.report(), MadeReports.unreadable());
        assertThat(text).startsWith("## Design check\n\n2 files checked, 1 not readable");
        assertThat(text.indexOf("<b>error</b>")).isBetween(1, text.indexOf("<b>note</b>"));
        assertThat(text).contains("- value 1.2 m, limit at most 0.9 m", "- source ", "- way out: A barrel of 150 cm.");
        assertThat(text).contains("for a person to look at: 1</summary>").contains("### Not checked");
        assertThat(text.substring(text.length() - 400)).contains("> Water under pressure");
        assertThat(count(text, "<details>")).isEqualTo(count(text, "</details>"));
    }

    @Test
    void what_can_hurt_someone_and_does_not_count_stands_above_the_rest() throws IOException {
        String text = write(1, MadeStandings.report(), MadeReports.report());
        assertThat(text.indexOf("Can hurt someone and does not count"))
                .isBetween(1, Math.min(text.indexOf("### Worst first"), text.indexOf("| design |")));
        assertThat(text).contains("- does not count: suppressed by R. Ode", "wears a lid");
    }

    @Test
    void however_much_there_is_it_fits_into_a_comment_and_what_is_left_out_is_counted() throws IOException {
        String text = write(700, MadeReports.report(), MadeReports.unreadable(), MadeStandings.report());
        assertThat(text.length()).isLessThanOrEqualTo(MarkdownWriter.LONGEST);
        assertThat(text).containsPattern("\\d+ more, not shown here\\.").contains("more designs need attention");
        assertThat(text).contains("> Water under pressure");
        assertThat(count(text, "<details>")).isEqualTo(count(text, "</details>"));
        assertThat(count(text, "<details>")).isGreaterThan(20);
    }

    @Test
    void a_finding_that_repeats_over_designs_is_told_once_with_how_many_there_are() throws IOException {
        String text = write(30, MadeReports.report());
        String once = write(1, MadeReports.report());
        assertThat(count(text, "<b>error</b>")).isEqualTo(count(once, "<b>error</b>"));
        assertThat(text).contains("(worst of 30, in 30 designs)").contains("- also at ", "- and at 19 more places");
        assertThat(once).doesNotContain("worst of", "also at");
        assertThat(text).contains("for a person to look at: 30</summary>");
    }

    @ParameterizedTest
    @CsvSource({
        "a*b*c,a&#42;b&#42;c",
        "<script>,&#60;script&#62;",
        "@everyone #12,&#64;everyone &#35;12",
        "[x](http://y),&#91;x&#93;(http&#58;//y)",
        "www.example.org v1.2,www&#46;example.org v1.2",
        "a|b `c` $d$,a&#124;b &#96;c&#96; &#36;d&#36;",
        "12.5 m at 3:4,12.5 m at 3:4"
    })
    void text_of_unknown_origin_is_shown_and_does_nothing(String given, String written) {
        assertThat(MarkdownText.of(given)).isEqualTo(written);
    }

    private static int count(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }
}
