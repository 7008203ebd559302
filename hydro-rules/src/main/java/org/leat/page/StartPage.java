package org.leat.page;

import java.io.IOException;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.readings.FirstStart.StartStep;
import org.leat.report.StartSheet;
import org.leat.report.Wording;

/**
 * Writes the sheet of a first start as a page of its own: a self-contained HTML file that loads nothing and runs nothing, for a phone,
 * and on paper two pages of A4 with room to write.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class StartPage {

    private static final int HALF_HOURS = 6;

    private final Rulebook rulebook;

    /** Writes in the words of a rulebook. */
    public StartPage(Rulebook rulebook) {
        this.rulebook = rulebook;
    }

    /** Writes the sheet of a design that was checked. */
    public void write(Report report, List<StartStep> steps, Appendable out) throws IOException {
        String name = report.design().isEmpty() ? report.file() : report.design();
        Wording wording = new Wording(rulebook);
        Markup page = PageFrame.beginStart("First start: " + name);
        page.open("header");
        page.leaf("p", report.file(), "class", "file");
        page.leaf("h1", "First start: " + name);
        page.open("p", "class", "blanks");
        for (String blank : List.of("date", "by", "instruments")) {
            page.open("span", "class", "blank is-" + blank).text(blank).close();
        }
        page.close().close();
        page.open("main", "class", "start");
        PageFrame.caution(page, wording, PageFrame.FIRST);
        PageFrame.loosenedFirst(page, rulebook);
        hindered(page, report);
        page.leaf("p", StartSheet.STOPPING, "class", "stopping");
        StartSteps.write(page, StartSheet.told(steps), "h2", true);
        hours(page);
        page.close();
        page.open("footer");
        PageFrame.caution(page, wording, PageFrame.AGAIN);
        PageFrame.loosened(page, rulebook);
        page.close();
        out.append(PageFrame.end(page));
    }

    private void hindered(Markup page, Report report) {
        StartSheet.Hindered hindered = new StartSheet(rulebook).hindered(report);
        list(page, "Do not start: the design fails", hindered.fails(), "danger");
        list(page, "Stop until somebody has settled, and signed", hindered.unsettled(), "settle");
    }

    /** On paper alone: room for what gets warm in some hours. */
    private static void hours(Markup page) {
        List<String> heads = List.of("time", "winding", "bearing", "bridge", "joints", "dump load", "pressure", "amps");
        page.open("div", "class", "paper").open("table", "aria-label", "Every half hour");
        page.open("thead").open("tr");
        heads.forEach(head -> page.leaf("th", head, "scope", "col"));
        page.close().close().open("tbody");
        for (int row = 0; row < HALF_HOURS; row++) {
            page.open("tr");
            heads.forEach(head -> page.leaf("td", "\u00a0"));
            page.close();
        }
        page.close().close().close();
    }

    private static void list(Markup page, String title, List<String> lines, String kind) {
        if (lines.isEmpty()) {
            return;
        }
        page.open("section", "class", kind).leaf("h2", title).open("ul", "class", "boxes");
        lines.forEach(line -> page.leaf("li", line));
        page.close().close();
    }
}
