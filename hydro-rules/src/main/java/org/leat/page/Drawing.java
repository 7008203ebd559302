package org.leat.page;

import java.math.BigDecimal;
import java.util.List;

/** An SVG picture in units of its own, which the page scales to the room there is. Looks come from classes alone. */
final class Drawing {

    /** As wide as every picture: narrow, so that its text can still be read on a phone. */
    static final double WIDTH = 400;

    /** One place of a picture. */
    record Place(double x, double y) {}

    private final Markup page;

    private Drawing(Markup page) {
        this.page = page;
    }

    /**
     * {@return a picture begun on a page}
     *
     * @param id unique on the page
     * @param title what it shows, for who cannot see it
     */
    static Drawing begin(Markup page, String id, String title, double height) {
        page.open(
                "svg",
                "viewBox",
                "0 0 " + number(WIDTH) + " " + number(height),
                "role",
                "img",
                "aria-labelledby",
                id + "-is",
                "class",
                "picture");
        page.leaf("title", title, "id", id + "-is");
        return new Drawing(page);
    }

    void end() {
        page.close();
    }

    /** Begins a group. */
    Drawing group(String... attributes) {
        page.open("g", attributes);
        return this;
    }

    Drawing endGroup() {
        page.close();
        return this;
    }

    Drawing line(double x1, double y1, double x2, double y2, String look) {
        return path("M" + pair(x1, y1) + "L" + pair(x2, y2), look);
    }

    /** Draws straight lines through places; nothing for fewer than two. */
    Drawing through(List<Place> places, String look) {
        if (places.size() > 1) {
            StringBuilder d = new StringBuilder();
            for (Place p : places) {
                d.append(d.isEmpty() ? "M" : "L").append(pair(p.x(), p.y()));
            }
            path(d.toString(), look);
        }
        return this;
    }

    Drawing path(String d, String look) {
        page.empty("path", "d", d, "class", look);
        return this;
    }

    Drawing rectangle(double x, double y, double width, double height, String look) {
        page.empty(
                "rect",
                "x",
                number(x),
                "y",
                number(y),
                "width",
                number(Math.max(0, width)),
                "height",
                number(Math.max(0, height)),
                "class",
                look);
        return this;
    }

    Drawing circle(double x, double y, double radius, String look) {
        page.empty("circle", "cx", number(x), "cy", number(y), "r", number(radius), "class", look);
        return this;
    }

    /** Writes a text; the look says how it is set and where it hangs: {@code mid} or {@code end}, else at its start. */
    Drawing text(double x, double y, String said, String look) {
        page.leaf("text", said, "x", number(x), "y", number(y), "class", look);
        return this;
    }

    /** {@return two coordinates as they stand in a path} */
    static String pair(double x, double y) {
        return number(x) + " " + number(y);
    }

    /** {@return a coordinate to a tenth: no more is seen, and the last bit of a sine never reaches a file} */
    static String number(double value) {
        BigDecimal tenth = BigDecimal.valueOf(Math.round(value * 10), 1).stripTrailingZeros();
        return tenth.signum() == 0 ? "0" : tenth.toPlainString();
    }

    /** {@return a text no longer than so many characters} */
    static String shortened(String text, int most) {
        int count = text.codePointCount(0, text.length());
        return count <= most ? text : text.substring(0, text.offsetByCodePoints(0, most - 1)) + "\u2026";
    }
}
