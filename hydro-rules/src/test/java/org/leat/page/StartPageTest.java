package org.leat.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class StartPageTest {

    @Test
    void every_step_has_its_heading_and_a_line_to_write_on_for_each_reading() throws IOException {
        Document page = Pages.sheet("rowan-ghyll").read();
        assertThat(Pages.all(page, "section")
                        .filter(s -> s.getAttribute("class").equals("step")))
                .hasSize(9)
                .allSatisfy(step -> {
                    assertThat(step.getElementsByTagName("h2").getLength()).isEqualTo(1);
                    Element table = (Element) step.getElementsByTagName("table").item(0);
                    int rows = ((Element) table.getElementsByTagName("tbody").item(0))
                            .getElementsByTagName("tr")
                            .getLength();
                    assertThat(rows).isPositive();
                });
        long lines = Pages.all(page, "td")
                .filter(td -> td.getAttribute("class").equals("is-yours"))
                .count();
        long readings = Pages.all(page, "th")
                .filter(th -> th.getAttribute("role").equals("rowheader"))
                .count();
        assertThat(lines).isEqualTo(readings).isGreaterThan(30);
    }

    @Test
    void cautions_stand_at_the_steps_they_belong_to() throws IOException {
        String page = Pages.sheet("rowan-ghyll").text();
        int open = page.indexOf("leads open");
        assertThat(page.indexOf("The wheel runs away")).isGreaterThan(open);
        assertThat(page.indexOf("batteries burn metal")).isGreaterThan(page.indexOf("on the bus"));
    }

    @Test
    void it_runs_nothing_loads_nothing_and_a_name_stays_a_name() throws IOException {
        Pages.Made made = Pages.sheetOf(Pages.demoText("rowan-ghyll")
                .replace("name: Rowan Ghyll hut", "name: \"<script>window.hit=1</script>\""));
        assertThat(made.text())
                .contains("default-src 'none'")
                .doesNotContain("<script")
                .doesNotContain("http://");
        assertThat(Pages.all(made.read(), "h1").findFirst().orElseThrow().getTextContent())
                .contains("<script>window.hit=1</script>");
    }

    @Test
    void what_fails_and_what_nobody_settled_stands_before_the_first_step() throws IOException {
        String page = Pages.sheet("first-try").text();
        assertThat(page.indexOf("Do not start: the design fails")).isPositive().isLessThan(page.indexOf("step-1"));
        assertThat(page.indexOf("Stop until somebody has settled")).isPositive().isLessThan(page.indexOf("step-1"));
    }

    @Test
    void the_page_of_the_plant_shows_the_steps_too() throws IOException {
        String page = Pages.demo("rowan-ghyll").text();
        assertThat(page).contains("First start, step by step").contains("Smallest nozzle, 9 mm, leads open");
        assertThat(Pages.demo("tannery-yard").text()).contains("Not to be started as it is");
    }
}
