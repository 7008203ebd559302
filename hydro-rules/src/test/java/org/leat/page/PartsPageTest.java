package org.leat.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leat.check.Identity;
import org.leat.check.Level;
import org.leat.check.Message;
import org.leat.check.Outcome;
import org.leat.choice.PartsFront;
import org.leat.file.DesignReader;
import org.leat.prices.PriceList;
import org.leat.report.PartsWriter;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The page of a made front: three sets, the second of them with warnings. */
class PartsPageTest {

    private static final PriceList LIST = new PriceList(
            "EUR",
            List.of(new PriceList.Choice(
                    "pipe <b>",
                    List.of("/x"),
                    List.of(part("thin", "10", true), part("thick", "20.50", false), part("wide", "40", false)))));

    private static String text;
    private static Document page;

    private static PriceList.Part part(String name, String price, boolean asDesigned) {
        return new PriceList.Part(name, new BigDecimal(price), List.of(), asDesigned);
    }

    private static PartsFront.Point point(int part, double kilowattHours, int warnings) {
        PriceList.Part taken = LIST.choices().get(0).parts().get(part);
        Outcome.Fail warning = new Outcome.Fail(
                new Identity("penstock/velocity", "/penstock", ""),
                Level.WARNING,
                null,
                new Message("fails", List.of()));
        return new PartsFront.Point(
                List.of(taken),
                taken.price(),
                kilowattHours * 3.6e6,
                Collections.nCopies(warnings, warning),
                List.of());
    }

    @BeforeAll
    static void write() throws IOException {
        text = made();
        page = new Pages.Made(text, Pages.CHECKER.check(DesignReader.read("", "x"))).read();
    }

    /** The page of that front. */
    static String made() throws IOException {
        PartsFront front = new PartsFront(
                List.of(point(0, 1000, 0), point(1, 3000, 2), point(2, 2000, 0)),
                PartsFront.End.STOPPED,
                3,
                3,
                3,
                0,
                new BigDecimal("40"),
                OptionalDouble.of(5e10),
                OptionalInt.of(0),
                null);
        PartsWriter.Subject subject = new PartsWriter.Subject("hut.yaml", "list.yaml", LIST, "over a year");
        return new PartsPage(Pages.CHECKER.rulebook(), subject).written(front, "<b>Hut");
    }

    private static List<Element> circles(String look) {
        return Pages.all(page, "circle")
                .filter(e -> e.getAttribute("class").equals(look))
                .filter(e -> !e.getAttribute("cx").equals("16")) // that of the key
                .toList();
    }

    private static double at(Element circle, String axis) {
        return Double.parseDouble(circle.getAttribute(axis));
    }

    @Test
    void what_costs_more_stands_to_the_right_and_what_gives_more_stands_higher() {
        List<Element> calm = circles("dot");
        List<Element> warned = circles("dot-bad");
        assertThat(calm).hasSize(2);
        assertThat(warned).hasSize(1);
        assertThat(at(calm.get(0), "cx")).isLessThan(at(warned.get(0), "cx"));
        assertThat(at(warned.get(0), "cx")).isLessThan(at(calm.get(1), "cx"));
        assertThat(at(calm.get(0), "cy")).isGreaterThan(at(calm.get(1), "cy"));
        assertThat(at(calm.get(1), "cy")).isGreaterThan(at(warned.get(0), "cy"));
    }

    @Test
    void each_set_has_its_price_its_parts_and_its_warnings() {
        assertThat(text)
                .contains("Set 2: 20.50 EUR, 3000 kWh a year", "as the design has it", "3 sets of parts are worth")
                .contains("Below 40 EUR", "No set gives more than 13889 kWh")
                .contains("penstock/velocity: ");
        assertThat(Pages.all(page, "li").filter(e -> e.getTextContent().startsWith("penstock/velocity")))
                .hasSize(2);
    }

    @Test
    void it_runs_nothing_and_names_are_text() {
        assertThat(text).doesNotContain("<script").doesNotContain("<b>").contains("&lt;b&gt;Hut", "pipe &lt;b&gt;");
    }
}
