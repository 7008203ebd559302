package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import org.leat.page.Drawing.Place;

/** A field between two axes. */
final class Plot {

    private static final int TICKS_ACROSS = 5;

    private final Drawing on;
    private final Scale x;
    private final Scale y;

    /** A field between the ends of two scales; the second grows upward. */
    Plot(Drawing on, Scale x, Scale y) {
        this.on = on;
        this.x = x;
        this.y = y;
    }

    double x(double value) {
        return x.at(value);
    }

    double y(double value) {
        return y.at(value);
    }

    /** Draws the lines to read values by and writes the values beside them. */
    Plot axes(String across, String up, int ticksUp) {
        for (double tick : y.ticks(ticksUp)) {
            on.line(x.start(), y.at(tick), x.end(), y.at(tick), tick == 0 ? "axis" : "grid");
            on.text(x.start() - 5, y.at(tick) + 4, y.written(tick, ticksUp), "tick end");
        }
        on.line(x.start(), y.start(), x.start(), y.end(), "axis");
        on.text(4, y.end() - 8, up, "axis-name");
        if (!across.isEmpty()) {
            for (double tick : x.ticks(TICKS_ACROSS)) {
                on.line(x.at(tick), y.start(), x.at(tick), y.start() + 4, "axis");
                boolean edge = x.at(tick) > Drawing.WIDTH - 14;
                on.text(
                        edge ? Drawing.WIDTH - 1 : x.at(tick),
                        y.start() + 17,
                        x.written(tick, TICKS_ACROSS),
                        edge ? "tick end" : "tick mid");
            }
            on.line(x.start(), y.start(), x.end(), y.start(), "axis");
            on.text(x.end(), y.start() + 32, across, "axis-name end");
        }
        return this;
    }

    /** Draws a line through values, broken where one is not a number. */
    Plot line(double[] across, double[] up, String look) {
        List<Place> run = new ArrayList<>();
        for (int i = 0; i < across.length; i++) {
            if (Double.isNaN(up[i])) {
                on.through(run, look);
                run.clear();
            } else {
                run.add(new Place(x.at(across[i]), y.at(up[i])));
            }
        }
        on.through(run, look);
        return this;
    }

    /** Draws the value of an upright limit across the field, and its name. */
    Plot upright(double value, String name, String look) {
        on.line(x.at(value), y.start(), x.at(value), y.end(), look);
        on.text(x.at(value) - 4, y.end() + 11, name, "label end");
        return this;
    }

    Plot dot(double across, double up, String look) {
        on.circle(x.at(across), y.at(up), 4.5, look);
        return this;
    }

    Plot cross(double across, double up, String look) {
        double px = x.at(across);
        double py = y.at(up);
        on.path(
                "M" + Drawing.pair(px - 4, py - 4) + "L" + Drawing.pair(px + 4, py + 4) + "M"
                        + Drawing.pair(px - 4, py + 4) + "L" + Drawing.pair(px + 4, py - 4),
                look);
        return this;
    }
}
