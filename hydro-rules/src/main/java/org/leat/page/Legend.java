package org.leat.page;

import java.util.ArrayList;
import java.util.List;

/** What the lines and marks of a picture are: real text under it, so that it wraps and can be read at its own size. */
final class Legend {

    private record Entry(String look, boolean mark, String said) {}

    private final List<Entry> entries = new ArrayList<>();

    Legend line(String look, String said) {
        entries.add(new Entry(look, false, said));
        return this;
    }

    Legend mark(String look, String said) {
        entries.add(new Entry(look, true, said));
        return this;
    }

    void write(Markup page) {
        page.open("ul", "class", "key");
        for (Entry entry : entries) {
            page.open("li");
            page.open("svg", "viewBox", "0 0 32 12", "aria-hidden", "true", "class", "swatch");
            if (entry.mark()) {
                page.empty("circle", "cx", "16", "cy", "6", "r", "4.5", "class", entry.look());
            } else {
                page.empty("path", "d", "M1 6L31 6", "class", entry.look());
            }
            page.close();
            page.leaf("span", entry.said());
            page.close();
        }
        page.close();
    }
}
