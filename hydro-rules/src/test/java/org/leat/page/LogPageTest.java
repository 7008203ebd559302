package org.leat.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class LogPageTest {

    private static String text;
    private static Document page;

    @BeforeAll
    static void write() throws IOException {
        Pages.Made made = Pages.log();
        text = made.text();
        page = made.read();
    }

    private static List<Element> looks(Element within, String element, String look) {
        return Pages.all(page, element)
                .filter(e -> e.getAttribute("class").equals(look))
                .filter(e -> (within.compareDocumentPosition(e) & Element.DOCUMENT_POSITION_CONTAINED_BY) != 0)
                .toList();
    }

    @Test
    void each_fault_has_a_picture_with_its_days_trend_and_limit_and_a_table_of_the_same() {
        List<Element> stations = Pages.all(page, "section")
                .filter(e -> e.getAttribute("class").equals("station"))
                .toList();
        assertThat(stations).hasSize(6);
        for (Element station : stations) {
            assertThat(looks(station, "circle", "joint")).hasSizeGreaterThanOrEqualTo(27);
            // a range for each day, one line of the trend in the picture and one in its key
            assertThat(looks(station, "path", "lead")).hasSize(27);
            assertThat(looks(station, "path", "line s-water")).hasSize(2);
            assertThat(looks(station, "path", "line s-limit")).hasSize(2);
            assertThat(station.getElementsByTagName("tr").getLength()).isEqualTo(1 + 27);
        }
        assertThat(text).contains("<td class=\"short\">3.8 %</td>").contains("Nozzle worn: now 3.5 %");
    }

    @Test
    void days_stand_in_their_order_and_what_is_larger_stands_higher() {
        Element station = Pages.all(page, "section")
                .filter(e -> e.getAttribute("id").equals("drift-0-station"))
                .findFirst()
                .orElseThrow();
        List<Element> dots = looks(station, "circle", "joint");
        double before = 0;
        for (Element dot : dots.subList(0, 27)) {
            double x = Double.parseDouble(dot.getAttribute("cx"));
            assertThat(x).isGreaterThan(before);
            before = x;
        }
        double first = Double.parseDouble(dots.get(0).getAttribute("cy"));
        double last = Double.parseDouble(dots.get(26).getAttribute("cy"));
        assertThat(last).isLessThan(first - 50);
    }

    @Test
    void it_runs_nothing_and_names_are_text() {
        assertThat(text).doesNotContain("<script").doesNotContain("<b>").contains("&lt;b&gt;Hut");
    }
}
