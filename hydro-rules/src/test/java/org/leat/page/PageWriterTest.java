package org.leat.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Paths;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;
import org.leat.quantity.QuantityKind;
import org.leat.report.UsualUnits;
import org.leat.report.Wording;
import org.leat.season.DesignYear;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class PageWriterTest {

    @ParameterizedTest
    @MethodSource("org.leat.page.Pages#demos")
    void every_picture_has_a_name_a_caption_and_a_table_of_its_numbers(String demo) throws IOException {
        Document page = Pages.demo(demo).read();
        List<Element> stations = Pages.all(page, "section")
                .filter(s -> s.getAttribute("class").equals("station"))
                .toList();
        assertThat(stations).hasSize(Topic.values().length);
        for (Element station : stations) {
            assertThat(station.getElementsByTagName("h2").getLength()).isEqualTo(1);
            assertThat(station.getElementsByTagName("p").item(0).getTextContent())
                    .hasSizeGreaterThan(40);
            if (station.getAttribute("id").equals("year-station") && hasNoYear(station)) {
                assertThat(station.getElementsByTagName("figure").getLength()).isZero();
                continue;
            }
            assertThat(station.getElementsByTagName("figure").getLength()).isEqualTo(1);
            assertThat(station.getElementsByTagName("table").getLength()).isPositive();
            assertThat(station.getElementsByTagName("title").item(0).getTextContent())
                    .isNotBlank();
        }
    }

    private static boolean hasNoYear(Element station) {
        return station.getElementsByTagName("p")
                .item(0)
                .getTextContent()
                .startsWith("No picture: the year was not run.");
    }

    @Test
    void the_year_stands_on_the_page_month_by_month_as_it_was_run() throws IOException {
        Document page = Pages.demo("rowan-ghyll").read();
        DesignYear.Told told = (DesignYear.Told) DesignYear.of(
                Plant.of(Objects.requireNonNull(DesignReader.read(Pages.demoText("rowan-ghyll"), "plant.yaml")
                        .design())),
                null,
                DesignYear.USUAL_VISIT);
        Element station = Pages.all(page, "section")
                .filter(s -> s.getAttribute("id").equals("year-station"))
                .findFirst()
                .orElseThrow();
        assertThat(hasNoYear(station)).isFalse();
        List<String> rows = new ArrayList<>();
        NodeList all = station.getElementsByTagName("tr");
        for (int i = 1; i <= told.year().months().size(); i++) {
            rows.add(((Element) all.item(i)).getElementsByTagName("td").item(0).getTextContent());
        }
        assertThat(rows)
                .hasSize(12)
                .isEqualTo(told.year().months().stream()
                        .map(m -> UsualUnits.show(m.made(), QuantityKind.ENERGY, "kWh", 3))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("org.leat.page.Pages#demos")
    void every_failure_stands_beside_exactly_one_picture_with_its_ways_out(String demo) throws IOException {
        Pages.Made made = Pages.demo(demo);
        Wording wording = new Wording(Pages.CHECKER.rulebook());
        List<String> said = Pages.all(made.read(), "article")
                .map(article -> plain(article.getTextContent()))
                .toList();
        List<Finding> failures = made.report().worstFirst(Kind.FAIL);
        assertThat(said).hasSize((int) failures.stream()
                .map(f -> f.outcome().rule() + f.outcome().path())
                .distinct()
                .count());
        for (Finding failure : failures) {
            List<String> its = said.stream()
                    .filter(text -> text.contains(failure.outcome().rule() + " at "
                                    + Paths.shown(failure.outcome().path()) + ",")
                            && text.contains(wording.value(failure.outcome()))
                            && text.contains(failure.outcome().during()))
                    .toList();
            assertThat(its).as(failure.outcome().toString()).hasSize(1);
            failure.rejected()
                    .forEach(tried ->
                            assertThat(its.get(0)).contains(plain(wording.of(tried.way(), failure.outcome()))));
        }
        assertThat(said.stream().filter(text -> text.contains("Way out")).count())
                .isEqualTo(failures.stream()
                        .filter(f -> !f.waysOut().isEmpty())
                        .map(f -> f.outcome().rule() + f.outcome().path())
                        .distinct()
                        .count());
    }

    @Test
    void the_head_says_whether_it_is_safe_what_it_gives_and_what_to_do_first() throws IOException {
        String head = head("tannery-yard");
        assertThat(head)
                .contains("Safe to open? No. " + errors("tannery-yard") + " errors.")
                .contains("It gives")
                .contains("kWh a day")
                .contains("Understood pipe 82.5 mm bore")
                .containsPattern("Do these first .* clears 2 errors")
                .contains("together leave")
                .contains("Tell or measure these next");
        assertThat(head("rowan-ghyll")).contains("Safe to open? Nothing that was judged speaks against it.");
    }

    private static long errors(String demo) throws IOException {
        long errors = Pages.demo(demo).report().findings().stream()
                .filter(finding -> finding.failsAt(Level.ERROR))
                .count();
        assertThat(errors).as("errors of " + demo).isGreaterThan(5);
        return errors;
    }

    private static String head(String demo) throws IOException {
        return plain(Pages.all(Pages.demo(demo).read(), "section")
                .filter(s -> s.getAttribute("class").equals("head"))
                .findFirst()
                .orElseThrow()
                .getTextContent());
    }

    @ParameterizedTest
    @MethodSource("org.leat.page.Pages#demos")
    void it_loads_nothing_and_runs_nothing(String demo) throws IOException {
        Pages.Made made = Pages.demo(demo);
        Document page = made.read();
        for (String loading :
                List.of("script", "link", "img", "image", "iframe", "object", "embed", "form", "use", "base")) {
            assertThat(Pages.all(page, loading)).as(loading).isEmpty();
        }
        assertThat(made.text()).doesNotContain("http://", "https://", "url(", "@import");
        Pages.all(page, "*").forEach(e -> {
            for (int i = 0; i < e.getAttributes().getLength(); i++) {
                assertThat(e.getAttributes().item(i).getNodeName())
                        .isNotEqualTo("style")
                        .doesNotStartWith("on");
            }
        });
        Pages.all(page, "*").filter(e -> e.hasAttribute("href")).forEach(e -> {
            assertThat(e.getAttribute("href")).startsWith("#");
            String target = e.getAttribute("href").substring(1);
            assertThat(Pages.all(page, "*").filter(t -> t.getAttribute("id").equals(target)))
                    .as(target)
                    .hasSize(1);
        });
    }

    @Test
    void its_policy_allows_its_own_stylesheet_and_nothing_else() throws IOException, NoSuchAlgorithmException {
        String text = Pages.demo("first-try").text();
        String sheet = text.substring(text.indexOf("<style>") + 7, text.indexOf("</style>"));
        String hash = Base64.getEncoder()
                .encodeToString(MessageDigest.getInstance("SHA-256").digest(sheet.getBytes(StandardCharsets.UTF_8)));
        assertThat(text)
                .contains("content=\"default-src 'none'; style-src 'sha256-" + hash
                        + "'; base-uri 'none'; form-action 'none'\"");
    }

    @Test
    void the_same_design_gives_the_same_page_in_every_locale() throws IOException {
        Locale before = Locale.getDefault();
        String first = Pages.demo("rowan-ghyll").text();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Pages.demo("rowan-ghyll").text()).isEqualTo(first);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void names_are_text_whatever_they_say() throws IOException {
        Pages.Made made = Pages.hostile();
        assertThat(made.report().readable()).isTrue();
        Document page = made.read();
        assertThat(Pages.all(page, "script")).isEmpty();
        assertThat(Pages.all(page, "img")).isEmpty();
        assertThat(Pages.all(page, "*").filter(e -> e.hasAttribute("onclick") || e.hasAttribute("onload")))
                .isEmpty();
        assertThat(Pages.all(page, "h1").findFirst().orElseThrow().getTextContent())
                .isEqualTo("<script>window.hit=1</script>' onload='hit()' \u05d0\u05d1");
        assertThat(made.text()).contains("&lt;/title&gt;&lt;img src=x onerror=hit()&gt;");
    }

    @Test
    void what_cannot_be_seen_or_is_no_character_is_shown_as_its_code() {
        Markup page = new Markup();
        page.leaf("p", "a\u202eb \ud800 \ufffe \ufdd0 \u0000 \u2028 \ud83d\ude00", "title", "\"\udc00\u0007<");
        assertThat(page.toString().strip())
                .isEqualTo(
                        "<p title=\"&quot;\\uDC00\\u0007&lt;\">a\\u202Eb \\uD800 \\uFFFE \\uFDD0 \\u0000 \\u2028 \ud83d\ude00</p>");
    }

    @Test
    void a_stylesheet_that_would_be_escaped_is_refused() {
        assertThatThrownBy(() -> new Markup().stylesheet("a > b {}")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_file_that_cannot_be_read_gets_a_page_that_says_why() throws IOException {
        Pages.Made made = Pages.of("format: 1\nname: x\nsiet: 3\n");
        assertThat(made.report().readable()).isFalse();
        assertThat(made.text()).contains("cannot be read as a design", "siet", "plant.yaml:3");
        assertThat(cautions(made)).isEqualTo(2);
    }

    @Test
    void a_design_that_cannot_be_solved_says_so_in_place_of_each_picture() throws IOException {
        Pages.Made made = Pages.of(Pages.demoText("first-try")
                .replace(
                        "  gross-head: 24 m",
                        "  gross-head: 24 m\n  water-temperature: { lowest: -9 °C, highest: -8 °C }"));
        assertThat(made.report().unsolved()).isNotEmpty();
        assertThat(Pages.all(made.read(), "p")
                        .filter(p -> p.getTextContent()
                                .contains("the plant cannot be solved without site.water-temperature")))
                .hasSize(6);
        assertThat(cautions(made)).isEqualTo(2);
    }

    @Test
    void a_page_holds_one_design() throws IOException {
        PageWriter writer = new PageWriter(Pages.CHECKER.rulebook(), new StringBuilder());
        Report report = Pages.demo("first-try").report();
        writer.add(report);
        assertThatThrownBy(() -> writer.add(report)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void the_index_leads_to_each_page_with_its_counts() throws IOException {
        PageIndex index = new PageIndex(Pages.CHECKER.rulebook());
        index.add(Pages.demo("tannery-yard").report(), "tannery-yard.html");
        index.add(Pages.of("format: 1\n").report(), "bad.html");
        index.broken("x&y.yaml", "x-y.html");
        Document page = new Pages.Made(index.written(), Pages.demo("first-try").report()).read();
        assertThat(Pages.all(page, "a").map(a -> a.getAttribute("href")))
                .containsExactly("tannery-yard.html", "bad.html", "x-y.html");
        List<String> cells = Pages.all(page, "tr")
                .map(row -> row.getTextContent().strip().replaceAll("\\s+", " "))
                .collect(Collectors.toCollection(ArrayList::new));
        assertThat(cells.get(1)).startsWith("Tannery yard no 1036 W " + errors("tannery-yard") + " ");
        assertThat(cells.get(2)).contains("not readable");
        assertThat(cells.get(3)).isEqualTo("x&y.yaml not checked");
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static long cautions(Pages.Made made) throws IOException {
        return Pages.all(made.read(), "section")
                .filter(s -> s.getAttribute("class").equals("caution"))
                .count();
    }

    @Test
    void a_line_of_the_alternators_limit_is_named_in_the_key_of_its_picture() throws IOException {
        String text = Pages.of(
                        Pages.demoText("first-try").replace("alternator:\n", "alternator:\n  speed-limit: 1000 rpm\n"))
                .text();
        String torque = text.substring(text.indexOf("id=\"torque-station\""));
        assertThat(torque.substring(0, torque.indexOf("</section>")))
                .contains("s-limit", "alternator\u2019s speed limit, ");
    }

    @ParameterizedTest
    @MethodSource("org.leat.page.Pages#demos")
    void no_table_is_empty(String demo) throws IOException {
        Document page = Pages.demo(demo).read();
        assertThat(Pages.all(page, "tbody"))
                .isNotEmpty()
                .allMatch(body -> body.getElementsByTagName("tr").getLength() > 0);
    }

    @Test
    void a_wheel_that_is_assumed_is_marked_so_in_the_picture_of_the_plant() throws IOException {
        assertThat(Pages.demo("first-try").text()).containsPattern("runner, [0-9]+ mm assumed");
        assertThat(Pages.demo("rowan-ghyll").text()).doesNotContain(" mm assumed");
    }
}
