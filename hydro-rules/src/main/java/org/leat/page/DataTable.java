package org.leat.page;

import java.util.ArrayList;
import java.util.List;

/** A table of the numbers of a picture, for who cannot see it and for who wants to read them. */
final class DataTable {

    /** Cells of no more characters stay on one line. */
    private static final int SHORT = 18;

    private final String caption;
    private final List<String> head;
    private final List<List<String>> rows = new ArrayList<>();

    DataTable(String caption, String... head) {
        this.caption = caption;
        this.head = List.of(head);
    }

    DataTable(String caption, List<String> head) {
        this.caption = caption;
        this.head = List.copyOf(head);
    }

    DataTable row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    DataTable row(List<String> cells) {
        rows.add(List.copyOf(cells));
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Writes it into a room of its own that can be moved sideways, by keyboard too, where it is wider than the page. */
    void write(Markup page) {
        page.open("div", "class", "table", "tabindex", "0", "role", "region", "aria-label", caption);
        page.open("table");
        page.leaf("caption", caption);
        page.open("thead").open("tr");
        for (String name : head) {
            page.leaf("th", name, "scope", "col");
        }
        page.close().close();
        page.open("tbody");
        for (List<String> row : rows) {
            page.open("tr");
            for (int i = 0; i < row.size(); i++) {
                if (i == 0) {
                    page.leaf("th", row.get(i), "scope", "row");
                } else {
                    page.leaf("td", row.get(i), "class", row.get(i).length() <= SHORT ? "short" : "");
                }
            }
            page.close();
        }
        page.close().close().close();
    }
}
