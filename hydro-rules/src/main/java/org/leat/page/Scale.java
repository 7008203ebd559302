package org.leat.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Where a value stands along an axis of a picture: evenly, or by its logarithm. */
final class Scale {

    private final double from;
    private final double to;
    private final double start;
    private final double end;
    private final boolean logarithmic;

    private Scale(double from, double to, double start, double end, boolean logarithmic) {
        this.from = from;
        this.to = to > from ? to : from + 1;
        this.start = start;
        this.end = end;
        this.logarithmic = logarithmic;
    }

    /** {@return a scale from one value to another, from one place of the picture to another} */
    static Scale even(double from, double to, double start, double end) {
        return new Scale(from, to, start, end, false);
    }

    /** {@return the same by logarithms} Both values must be above zero. */
    static Scale logarithmic(double from, double to, double start, double end) {
        return new Scale(from, to, start, end, true);
    }

    double from() {
        return from;
    }

    double to() {
        return to;
    }

    double start() {
        return start;
    }

    double end() {
        return end;
    }

    /** {@return the place of a value; one beyond an end stands at that end} */
    double at(double value) {
        double held = Math.max(from, Math.min(to, value));
        double share = logarithmic ? Math.log(held / from) / Math.log(to / from) : (held - from) / (to - from);
        return start + share * (end - start);
    }

    /** {@return round values within the scale, about as many as asked for} */
    List<Double> ticks(int about) {
        List<Double> ticks = new ArrayList<>();
        if (logarithmic) {
            for (double ten = Math.pow(10, Math.floor(Math.log10(from))); ten <= to; ten *= 10) {
                for (double one : new double[] {1, 2, 5}) {
                    if (one * ten >= from && one * ten <= to) {
                        ticks.add(one * ten);
                    }
                }
            }
            return ticks;
        }
        double step = step(about);
        for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    /** {@return a round value as it is written beside the axis} */
    String written(double tick, int about) {
        double step = logarithmic ? tick : step(about);
        int places = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
        String shown =
                BigDecimal.valueOf(tick).setScale(places, RoundingMode.HALF_UP).toPlainString();
        return shown.replace('-', '\u2212');
    }

    private double step(int about) {
        double raw = (to - from) / about;
        double ten = Math.pow(10, Math.floor(Math.log10(raw)));
        double of = raw / ten;
        return ten * (of <= 1 ? 1 : of <= 2 ? 2 : of <= 5 ? 5 : 10);
    }
}
