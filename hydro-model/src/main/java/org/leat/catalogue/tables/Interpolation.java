package org.leat.catalogue.tables;

import java.util.List;
import org.leat.law.Answer;

/** Straight lines between the points of a table. */
final class Interpolation {

    /** One point; a table lists them with {@code x} rising. */
    record Point(double x, double y) {}

    private Interpolation() {}

    /** {@return the value at x, or that x lies outside the table} */
    static Answer answer(List<Point> points, double x, String law, String input, String unit) {
        double low = points.get(0).x();
        double high = points.get(points.size() - 1).x();
        return x < low || x > high ? Answer.outside(law, input, x, low, high, unit) : Answer.of(at(points, x));
    }

    /** {@return the value at x} The caller has made sure that x lies within the table. */
    static double at(List<Point> points, double x) {
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (x <= b.x()) {
                return a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
            }
        }
        throw new IllegalArgumentException(x + " is beyond the table");
    }
}
