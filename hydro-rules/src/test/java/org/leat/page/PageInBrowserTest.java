package org.leat.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pages as a browser lays them out, read by an accessibility engine (axe-core). Skipped where there is no browser. */
class PageInBrowserTest {

    private static final char TAB = '\ue004';

    /** Names of texts of pictures that stand outside their picture or on each other. */
    private static final String BADLY_PLACED = """
            const bad = [];
            for (const svg of document.querySelectorAll('svg.picture')) {
              const room = svg.viewBox.baseVal;
              const boxes = [...svg.querySelectorAll('text')].map(t => [t.textContent, t.getBBox()]);
              boxes.forEach(([said, b], i) => {
                if (b.x < -0.5 || b.y < -1 || b.x + b.width > room.width + 1 || b.y + b.height > room.height + 1) {
                  bad.push('outside: ' + said);
                }
                boxes.slice(i + 1).forEach(([other, o]) => {
                  const across = Math.min(b.x + b.width, o.x + o.width) - Math.max(b.x, o.x);
                  const up = Math.min(b.y + b.height, o.y + o.height) - Math.max(b.y, o.y);
                  if (across > 1 && up > 4) { bad.push(said + ' on ' + other); }
                });
              });
            }
            return bad;
            """;

    /** Words of pictures that nobody sees. */
    private static final String HIDDEN = """
            return [...document.querySelectorAll('svg text')].filter(t => {
              const style = getComputedStyle(t);
              const box = t.getBoundingClientRect();
              return style.display === 'none' || style.visibility !== 'visible' || box.width < 1 || box.height < 1;
            }).map(t => t.textContent);
            """;

    private static RealBrowser browser;
    private static String engine;

    @TempDir
    static Path folder;

    @BeforeAll
    static void start() throws IOException {
        assumeTrue(RealBrowser.isThere(), "no chromium with its driver on this machine: pages are not looked at");
        try (InputStream in = PageInBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            engine = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        browser = RealBrowser.start();
        for (String demo : Pages.demos().toList()) {
            Files.writeString(folder.resolve(demo + ".html"), Pages.demo(demo).text());
        }
    }

    @AfterAll
    static void stop() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    private static Path page(String demo) {
        return folder.resolve(demo + ".html");
    }

    @ParameterizedTest
    @MethodSource("org.leat.page.Pages#demos")
    void the_accessibility_engine_finds_nothing_on_a_phone_by_day_nor_on_a_screen_by_night(String demo)
            throws IOException {
        browser.show(page(demo), 360, "light");
        assertThat(violations()).isEmpty();
        browser.show(page(demo), 1400, "dark");
        assertThat(violations()).isEmpty();
    }

    @Test
    void the_accessibility_engine_finds_nothing_on_an_index_nor_on_a_page_that_says_why() throws IOException {
        PageIndex index = new PageIndex(Pages.CHECKER.rulebook());
        index.add(Pages.demo("first-try").report(), "first-try.html");
        Files.writeString(page("index"), index.written());
        Files.writeString(page("unreadable"), Pages.of("format: 1\nname: x\n").text());
        for (String made : List.of("index", "unreadable")) {
            browser.show(page(made), 360, "dark");
            assertThat(violations()).isEmpty();
            assertThat(browser.run("return document.documentElement.scrollWidth")
                            .asInt())
                    .isEqualTo(360);
        }
    }

    @Test
    void the_page_of_a_log_is_read_fits_and_has_no_words_on_each_other() throws IOException {
        Files.writeString(page("log"), Pages.log().text());
        for (int width : new int[] {360, 1400}) {
            browser.show(page("log"), width, width == 360 ? "dark" : "light");
            assertThat(violations()).isEmpty();
            assertThat(texts(browser.run(BADLY_PLACED))).as(width + " wide").isEmpty();
            assertThat(browser.run("return document.documentElement.scrollWidth")
                            .asInt())
                    .isEqualTo(width);
        }
    }

    @Test
    void the_accessibility_engine_sees_what_is_wrong() throws IOException {
        Files.writeString(
                page("wrong"),
                Pages.demo("first-try").text().replace("lang=\"en\"", "").replace("aria-labelledby=\"plant-is\"", ""));
        browser.show(page("wrong"), 360, "light");
        assertThat(String.join(" ", violations())).contains("html-has-lang");
    }

    @ParameterizedTest
    @MethodSource("org.leat.page.Pages#demos")
    void nothing_is_wider_than_the_window(String demo) throws IOException {
        for (int width : new int[] {360, 800, 1400}) {
            browser.show(page(demo), width, "light");
            assertThat(browser.run("return document.documentElement.scrollWidth")
                            .asInt())
                    .isEqualTo(width);
        }
    }

    @ParameterizedTest
    @MethodSource("org.leat.page.Pages#demos")
    void the_words_of_a_picture_stand_inside_it_and_not_on_each_other(String demo) throws IOException {
        for (int width : new int[] {360, 1400}) {
            browser.show(page(demo), width, "light");
            assertThat(texts(browser.run(BADLY_PLACED))).as(width + " wide").isEmpty();
        }
    }

    @Test
    void every_word_of_a_picture_is_shown_on_every_kind_of_page() throws IOException {
        Files.writeString(page("log"), Pages.log().text());
        Files.writeString(page("sheet"), Pages.sheet("rowan-ghyll").text());
        Files.writeString(page("set"), PartsPageTest.made());
        for (String made : List.of("rowan-ghyll", "first-try", "log", "sheet", "set")) {
            for (int width : new int[] {360, 1400}) {
                browser.show(page(made), width, "light");
                assertThat(texts(browser.run(HIDDEN)))
                        .as(made + ", " + width + " wide")
                        .isEmpty();
                boolean pictures = browser.run("return document.querySelectorAll('svg text').length")
                                .asInt()
                        > 0;
                assertThat(pictures).as(made).isEqualTo(!made.equals("sheet"));
            }
        }
    }

    @Test
    void a_table_wider_than_its_room_shows_a_shade_at_its_edge() throws IOException {
        browser.show(page("rowan-ghyll"), 360, "light");
        JsonNode shades = browser.run("return [...document.querySelectorAll('.table')]"
                + ".filter(t => t.scrollWidth > t.clientWidth).map(t => getComputedStyle(t).backgroundAttachment)");
        assertThat(texts(shades)).isNotEmpty().allMatch("local, local, scroll, scroll"::equals);
    }

    @Test
    void words_are_large_enough_on_a_phone() throws IOException {
        browser.show(page("rowan-ghyll"), 360, "light");
        JsonNode sizes =
                browser.run("return [...document.querySelectorAll('svg.picture text')].map(t => t.getScreenCTM().a"
                        + " * parseFloat(getComputedStyle(t).fontSize))");
        for (JsonNode size : sizes) {
            assertThat(size.asDouble()).isGreaterThan(9.5);
        }
    }

    @Test
    void the_keyboard_reaches_the_skip_link_first_then_every_link_and_every_table() throws IOException {
        browser.show(page("tannery-yard"), 800, "light");
        int all = browser.run("return document.querySelectorAll('a, [tabindex]').length")
                .asInt();
        Set<String> reached = new LinkedHashSet<>();
        for (int i = 0; i < all; i++) {
            browser.press(TAB);
            reached.add(
                    browser.run("const e = document.activeElement; return e.tagName + ' ' + (e.getAttribute('href') ||"
                                    + " e.getAttribute('aria-label'))")
                            .asText());
        }
        assertThat(reached.iterator().next()).isEqualTo("A #plant-station");
        assertThat(reached).hasSizeGreaterThan(all - 2).allMatch(r -> r.startsWith("A #") || r.startsWith("DIV "));
    }

    @Test
    void hostile_names_are_seen_and_do_nothing() throws IOException {
        Files.writeString(page("hostile"), Pages.hostile().text());
        browser.show(page("hostile"), 360, "light");
        assertThat(browser.run("return typeof window.hit").asText()).isEqualTo("undefined");
        assertThat(browser.run("return document.querySelectorAll('script, img, [onclick], [onload]').length")
                        .asInt())
                .isZero();
        assertThat(browser.run("return document.querySelector('h1').textContent")
                        .asText())
                .startsWith("<script>window.hit=1</script>");
        assertThat(browser.run("return document.documentElement.scrollWidth").asInt())
                .isEqualTo(360);
        assertThat(violations()).isEmpty();
    }

    @Test
    void it_loads_nothing_but_itself() throws IOException {
        browser.show(page("rowan-ghyll"), 800, "light");
        assertThat(browser.run("return performance.getEntriesByType('resource').map(e => e.name)"))
                .isEmpty();
        assertThat(browser.run("return getComputedStyle(document.querySelector('.caution')).borderTopWidth")
                        .asText())
                .as("its own stylesheet is allowed")
                .isEqualTo("2px");
    }

    @Test
    void it_prints() throws IOException {
        browser.show(page("rowan-ghyll"), 800, "dark");
        byte[] pdf = Base64.getDecoder().decode(browser.printed());
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        assertThat(text).startsWith("%PDF-");
        assertThat(text).containsPattern("MediaBox\\s*\\[0 0 59[45][.0-9]* 84[12][.0-9]*\\]");
    }

    @Test
    void the_sheet_of_a_first_start_is_accessible_fits_a_phone_and_two_pages_of_paper() throws IOException {
        for (String demo : List.of("rowan-ghyll", "tannery-yard")) {
            Files.writeString(page(demo + "-start"), Pages.sheet(demo).text());
            browser.show(page(demo + "-start"), 360, "light");
            assertThat(browser.run("return document.documentElement.scrollWidth")
                            .asInt())
                    .isEqualTo(360);
            assertThat(violations()).isEmpty();
            browser.show(page(demo + "-start"), 1400, "dark");
            assertThat(violations()).isEmpty();
            String pdf = new String(Base64.getDecoder().decode(browser.printed()), StandardCharsets.ISO_8859_1);
            assertThat(pdf.split("/Type\\s*/Page\\b", -1).length - 1).isEqualTo(2);
        }
    }

    private static List<String> violations() throws IOException {
        browser.run(engine);
        JsonNode found = browser.await("const done = arguments[arguments.length - 1];"
                + " axe.run().then(r => done(r.violations.map(v => v.id + ': '"
                + " + v.nodes.map(n => n.html + ' ' + n.failureSummary).join(' | ')))).catch(e => done([String(e)]));");
        return texts(found);
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.asText()));
        return texts.stream().collect(Collectors.toList());
    }
}
