package org.leat.page;

import java.util.List;
import org.leat.report.StartSheet;

/** The steps of a first start as parts of a page: what is done, what can hurt, what is read. */
final class StartSteps {

    private StartSteps() {}

    /**
     * Writes the steps.
     *
     * @param heading element of their titles
     * @param room whether there is a cell to write into
     */
    static void write(Markup page, List<StartSheet.Told> steps, String heading, boolean room) {
        int number = 1;
        for (StartSheet.Told step : steps) {
            String id = "step-" + number;
            page.open("section", "class", "step", "aria-labelledby", id);
            page.leaf(heading, number + "\u2002" + step.title(), "id", id);
            page.leaf("p", step.action());
            if (!step.danger().isEmpty()) {
                page.open("p", "class", "hand")
                        .leaf("strong", "Caution:")
                        .text(" " + step.danger())
                        .close();
            }
            if (!step.reads().isEmpty()) {
                table(page, step, room);
            }
            page.close();
            number++;
        }
    }

    private static void table(Markup page, StartSheet.Told step, boolean room) {
        page.open("table", "class", "reads", "role", "table", "aria-label", step.title());
        page.open("thead", "role", "rowgroup").open("tr", "role", "row");
        for (String head : List.of("read", "expected", "range", "stop above")) {
            page.leaf("th", head, "scope", "col", "role", "columnheader");
        }
        if (room) {
            page.leaf("th", "yours", "scope", "col", "role", "columnheader");
        }
        page.close().close();
        page.open("tbody", "role", "rowgroup");
        for (StartSheet.Reads read : step.reads()) {
            page.open("tr", "role", "row");
            page.open("th", "scope", "row", "role", "rowheader").text(read.name());
            if (!read.where().isEmpty()) {
                page.text(" ").leaf("span", read.where(), "class", "with");
            }
            page.close();
            cell(page, "expected", "is-expected", read.expected());
            cell(page, "range", "is-range", read.range());
            cell(
                    page,
                    "stop above",
                    read.beyond() ? "is-stop is-beyond" : "is-stop",
                    read.beyond() ? read.stop() + " !" : read.stop());
            if (room) {
                cell(page, "yours", "is-yours", "");
            }
            page.close();
        }
        page.close().close();
    }

    private static void cell(Markup page, String label, String kind, String text) {
        page.open(
                "td", "role", "cell", "class", text.isEmpty() && !kind.equals("is-yours") ? kind + " is-empty" : kind);
        page.leaf("span", label, "class", "label", "aria-hidden", "true");
        page.text(text.isEmpty() ? "\u00a0" : text);
        page.close();
    }
}
