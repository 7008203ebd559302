package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.choice.SafetyVerdict;
import org.leat.quantity.QuantityKind;
import org.leat.report.OverviewWords;
import org.leat.report.UsualUnits;
import org.leat.report.Wording;

/** The index of several designs' pages, in the order they were added. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class PageIndex {

    private record Row(String name, String page, List<String> cells) {}

    private final Rulebook rulebook;
    private final Wording wording;
    private final List<Row> rows = new ArrayList<>();

    /** Words it with a rulebook. */
    public PageIndex(Rulebook rulebook) {
        this.rulebook = rulebook;
        this.wording = new Wording(rulebook);
    }

    /**
     * Lists a design.
     *
     * @param page where its page stands, relative to the index
     */
    public void add(Report report, String page) {
        String name = report.design().isEmpty() ? report.file() : report.design();
        if (!report.readable()) {
            rows.add(new Row(name, page, List.of("not readable", "", "", "", "", "")));
            return;
        }
        rows.add(new Row(
                name,
                page,
                List.of(
                        OverviewWords.shortly(SafetyVerdict.of(report, rulebook)),
                        report.running().isEmpty()
                                ? ShownText.UNKNOWN
                                : UsualUnits.show(
                                        report.running().get(0).operatingPoint().batteryPower(), QuantityKind.POWER),
                        Long.toString(report.failures(Level.ERROR)),
                        Long.toString(report.failures(Level.WARNING)),
                        Long.toString(report.failures(Level.NOTE)),
                        Long.toString(report.count(Kind.OPEN) + report.count(Kind.REVIEW)))));
    }

    /** Lists a file over which the program broke. */
    public void broken(String file, String page) {
        rows.add(new Row(file, page, List.of("not checked", "", "", "", "", "")));
    }

    /** {@return the index} */
    public String written() {
        Markup page = PageFrame.begin("Designs checked");
        page.open("header").leaf("h1", "Designs checked").close();
        page.open("main");
        PageFrame.caution(page, wording, PageFrame.FIRST);
        PageFrame.loosenedFirst(page, rulebook);
        page.open("div", "class", "table", "tabindex", "0", "role", "region", "aria-label", "Designs checked");
        page.open("table").leaf("caption", "Designs checked");
        page.open("thead").open("tr");
        for (String head :
                List.of("design", "safe to open?", "at the battery", "errors", "warnings", "notes", "not judged")) {
            page.leaf("th", head, "scope", "col");
        }
        page.close().close().open("tbody");
        for (Row row : rows) {
            page.open("tr")
                    .open("th", "scope", "row")
                    .leaf("a", row.name(), "href", row.page())
                    .close();
            row.cells().forEach(cell -> page.leaf("td", cell));
            page.close();
        }
        page.close().close().close();
        page.close();
        page.open("footer");
        PageFrame.caution(page, wording, PageFrame.AGAIN);
        PageFrame.loosened(page, rulebook);
        page.close();
        return PageFrame.end(page);
    }
}
