package org.leat.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leat.readings.Drift;
import org.leat.readings.LogStudy;
import org.leat.report.LogWriter;

/** One fault that comes slowly: its picture over time, with its numbers beside it. */
final class DriftFigure {

    /** More days than these are told by their months. */
    private static final int MOST_ROWS = 31;

    private final LogWriter words;

    DriftFigure(LogWriter words) {
        this.words = words;
    }

    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Writes a picture of one fault and its numbers. */
    void write(Markup page, LogStudy.Told told, int place) {
        Drift drift = told.drifts().get(place);
        String id = "drift-" + place;
        page.open("section", "class", "station", "id", id + "-station", "aria-labelledby", id + "-title");
        page.leaf("h2", capital(LogWriter.name(drift)), "id", id + "-title");
        page.leaf(
                "p",
                place == 0
                        ? "Of all faults that come slowly this one, by itself, explains the changes best. "
                                + words.line(drift)
                        : "As if this fault alone were behind the changes; what stands above explains them better. "
                                + words.line(drift),
                "class",
                "look");
        page.open("div", "class", "pair");
        page.open("figure");
        new DriftPicture(drift, told.last()).draw(page, id);
        page.close();
        page.open("div", "class", "numbers");
        table(drift).write(page);
        page.close().close().close();
    }

    /** Each day where there are few, else the last of each month. */
    private static DataTable table(Drift drift) {
        boolean few = drift.days().size() <= MOST_ROWS;
        DataTable table = new DataTable(
                capital(LogWriter.name(drift)) + (few ? ", size by day" : ", size on the last day of each month"),
                "day",
                "size",
                "95 % of the time within");
        List<Drift.Day> days = new ArrayList<>();
        for (Drift.Day day : drift.days()) {
            boolean same = !days.isEmpty() && month(days.get(days.size() - 1).day()) == month(day.day());
            if (!few && same) {
                days.remove(days.size() - 1);
            }
            days.add(day);
        }
        for (Drift.Day day : days) {
            table.row(
                    day.day().toString(),
                    percent(day.size()),
                    percent(day.size() - 2 * day.standard()) + " to " + percent(day.size() + 2 * day.standard()));
        }
        return table;
    }

    /** All alike, to a tenth of a per cent. */
    private static String percent(double share) {
        long tenths = Math.round(1000 * share);
        return BigDecimal.valueOf(tenths, 1).toPlainString().replace('-', '\u2212') + " %";
    }

    private static int month(LocalDate day) {
        return 12 * day.getYear() + day.getMonthValue();
    }
}
