package org.leat.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apiguardian.api.API;
import org.leat.check.Rulebook;
import org.leat.readings.Drift;
import org.leat.readings.ImpossibleReading;
import org.leat.readings.LogStudy;
import org.leat.report.LogWriter;
import org.leat.report.Plainly;
import org.leat.report.Wording;

/** A log as a page: what changes, and a picture of each fault that comes slowly over time, with its numbers beside it. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class LogPage {

    /** More days than these are told by their months. */
    private static final int MOST_ROWS = 31;

    private final Wording wording;
    private final LogWriter words;

    /** Words it with a rulebook. */
    public LogPage(Rulebook rulebook) {
        this.wording = new Wording(rulebook);
        this.words = new LogWriter(rulebook);
    }

    /**
     * {@return the page}
     *
     * @param told by the log
     * @param design name of the plant, or of its file
     * @param file the log's name
     */
    public String written(LogStudy.Told told, String design, String file) {
        String name = design + ", over time";
        Markup page = Sheet.begin(name);
        page.leaf("a", "To the pictures", "href", "#drift-0-station", "class", "skip");
        page.open("header");
        page.leaf("p", file, "class", "file");
        page.leaf("h1", name);
        page.close();
        page.open("main");
        Sheet.caution(page, wording, Sheet.FIRST);
        head(page, told);
        contents(page, told.drifts());
        for (int i = 0; i < told.drifts().size(); i++) {
            station(page, told, i);
        }
        impossible(page, told.impossible());
        page.close();
        page.open("footer");
        Sheet.caution(page, wording, Sheet.AGAIN);
        page.close();
        return Sheet.end(page);
    }

    private void head(Markup page, LogStudy.Told told) {
        List<String> lines = words.verdict(told);
        page.open("section", "class", "head", "aria-label", "What changes");
        page.leaf("p", capital(lines.get(0)), "class", "verdict is-" + (told.growing() == null ? "none" : "warning"));
        lines.subList(1, lines.size()).forEach(line -> page.leaf("p", line));
        page.leaf("p", LogWriter.span(told) + ". Told as a change since the first days.", "class", "counts");
        page.close();
    }

    private static void contents(Markup page, List<Drift> drifts) {
        page.open("nav", "aria-label", "On this page").open("ol");
        for (int i = 0; i < drifts.size(); i++) {
            page.open("li")
                    .leaf("a", capital(LogWriter.name(drifts.get(i))), "href", "#drift-" + i + "-station")
                    .close();
        }
        page.close().close();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private void station(Markup page, LogStudy.Told told, int place) {
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

    private void impossible(Markup page, List<ImpossibleReading> impossible) {
        if (!impossible.isEmpty()) {
            page.open("section", "class", "list").leaf("h2", "Left out");
            page.leaf(
                    "p",
                    impossible.size() + " readings cannot be on this plant, whatever is wrong with it: "
                            + Plainly.of(impossible.get(0).reading().path())
                            + (impossible.size() > 1 ? " and others." : "."));
            page.close();
        }
    }
}
