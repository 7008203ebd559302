package org.leat.page;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leat.readings.Drift;
import org.leat.report.LogWriter;

/** One fault's size over the days of a log, with its range, its trend carried on, and its limit. */
final class DriftPicture {

    private static final double TOP = 28;
    private static final double FOOT = 220;
    private static final double LEFT = 44;
    private static final double RIGHT = 392;

    /** More days than these are dots without their ranges. */
    private static final int RANGES = 80;

    private static final int MOST_TICKS = 5;

    private final Drift drift;
    private final LocalDate first;
    private final LocalDate last;
    private final Scale x;
    private final Scale y;

    DriftPicture(Drift drift, LocalDate last) {
        this.drift = drift;
        this.first = drift.days().get(0).day();
        this.last = last;
        double span = Math.max(14, day(last));
        double beyond = day(last) + span / 2;
        LocalDate met = drift.met();
        double end = met == null || day(met) > day(last) + span ? beyond : Math.max(beyond, day(met) + span / 10);
        double least = 0;
        double most = drift.limit();
        for (Drift.Day one : drift.days()) {
            least = Math.min(least, one.size() - 2 * one.standard());
            most = Math.max(most, one.size() + 2 * one.standard());
        }
        this.x = Scale.even(0, end, LEFT, RIGHT);
        this.y = Scale.even(100 * least - 4 * (most - least), 100 * most + 8 * (most - least), FOOT, TOP);
    }

    private double day(LocalDate day) {
        return ChronoUnit.DAYS.between(first, day);
    }

    void draw(Markup page, String id) {
        Drawing on = Drawing.begin(page, id, LogWriter.name(drift) + " over the days of the log", FOOT + 42);
        Plot plot = new Plot(on, x, y);
        plot.axes("", "size, %", 5);
        dates(on);
        on.line(LEFT, y.at(100 * drift.limit()), RIGHT, y.at(100 * drift.limit()), "line s-limit");
        boolean ranges = drift.days().size() <= RANGES;
        for (Drift.Day one : drift.days()) {
            double at = day(one.day());
            if (ranges) {
                on.line(
                        x.at(at),
                        y.at(100 * (one.size() - 2 * one.standard())),
                        x.at(at),
                        y.at(100 * (one.size() + 2 * one.standard())),
                        "lead");
            }
            on.circle(x.at(at), y.at(100 * one.size()), ranges ? 3 : 1.6, "joint");
        }
        trend(on, plot);
        on.end();
        key(ranges).write(page);
    }

    /** The trend from where it began to the end of the picture, and as fast as it may be. */
    private void trend(Drawing on, Plot plot) {
        if (Double.isInfinite(drift.perDayStandard())) {
            return;
        }
        double now = day(last);
        double from = day(drift.since());
        through(on, "line s-water", from, now, drift.now() - drift.perDay() * (now - from), drift.now());
        double end = x.to();
        double ahead = end - now;
        through(on, "line s-set2", now, end, drift.now(), drift.now() + drift.perDay() * ahead);
        double fast = drift.perDay() + 2 * drift.perDayStandard();
        double high = drift.now() + 2 * drift.nowStandard();
        through(on, "line s-set1", now, end, high, high + fast * ahead);
        LocalDate met = drift.met();
        if (met != null && day(met) <= end && day(met) > now) {
            plot.cross(day(met), 100 * drift.limit(), "cross");
        }
    }

    /** A straight line, cut off where the picture ends. */
    private void through(Drawing on, String look, double from, double to, double atFrom, double atTo) {
        double low = y.from() / 100;
        double high = y.to() / 100;
        double slope = to > from ? (atTo - atFrom) / (to - from) : 0;
        double begin = from;
        double end = to;
        if (slope != 0) {
            double one = from + ((slope > 0 ? low : high) - atFrom) / slope;
            double other = from + ((slope > 0 ? high : low) - atFrom) / slope;
            begin = Math.max(begin, one);
            end = Math.min(end, other);
        }
        if (end > begin) {
            on.line(
                    x.at(begin),
                    y.at(100 * (atFrom + slope * (begin - from))),
                    x.at(end),
                    y.at(100 * (atFrom + slope * (end - from))),
                    look);
        }
    }

    private void dates(Drawing on) {
        on.line(LEFT, FOOT, RIGHT, FOOT, "axis");
        for (LocalDate tick : ticks()) {
            double at = x.at(day(tick));
            boolean edge = at > RIGHT - 24;
            on.line(at, FOOT, at, FOOT + 4, "axis");
            on.text(edge ? Drawing.WIDTH - 1 : at, FOOT + 17, shown(tick), edge ? "tick end" : "tick mid");
        }
        on.text(RIGHT, FOOT + 32, months() ? "month" : "day", "axis-name end");
    }

    private boolean months() {
        return x.to() > 70;
    }

    private String shown(LocalDate tick) {
        return months()
                ? String.format(Locale.ROOT, "%d-%02d", tick.getYear(), tick.getMonthValue())
                : String.format(Locale.ROOT, "%02d-%02d", tick.getMonthValue(), tick.getDayOfMonth());
    }

    /** The first days of months, or each so many days where the log is short. */
    private List<LocalDate> ticks() {
        LocalDate end = first.plusDays((long) x.to());
        List<LocalDate> ticks = new ArrayList<>();
        if (!months()) {
            long step = Math.max(1, Math.round(x.to() / MOST_TICKS));
            for (LocalDate at = first; !at.isAfter(end); at = at.plusDays(step)) {
                ticks.add(at);
            }
            return ticks;
        }
        long all = ChronoUnit.MONTHS.between(first, end) + 1;
        int step = 1;
        for (int one : new int[] {1, 2, 3, 6, 12, 24, 60, 120}) {
            step = one;
            if (all / one <= MOST_TICKS) {
                break;
            }
        }
        LocalDate at = first.withDayOfMonth(1).isBefore(first)
                ? first.withDayOfMonth(1).plusMonths(1)
                : first;
        for (; !at.isAfter(end); at = at.plusMonths(step)) {
            ticks.add(at);
        }
        return ticks;
    }

    private Legend key(boolean ranges) {
        Legend key = new Legend();
        key.mark("joint", ranges ? "size that suits a day, the line its 95 %" : "size that suits a day");
        if (!Double.isInfinite(drift.perDayStandard())) {
            key.line("line s-water", "its trend" + (drift.since().equals(first) ? "" : " since " + drift.since()));
            key.line("line s-set2", "carried on");
            key.line("line s-set1", "as fast as it may be, 95 %");
        }
        return key.line("line s-limit", "its limit, " + ShownText.percent(drift.limit()) + ", common practice");
    }
}
