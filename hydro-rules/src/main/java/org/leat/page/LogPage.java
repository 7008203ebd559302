package org.leat.page;

import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Rulebook;
import org.leat.readings.Drift;
import org.leat.readings.ImpossibleReading;
import org.leat.readings.LogStudy;
import org.leat.report.LogWriter;
import org.leat.report.PlainText;
import org.leat.report.Wording;

/** A log as a page: what changes, and a picture of each fault that comes slowly over time, with its numbers beside it. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class LogPage {

    private final Wording wording;
    private final LogWriter words;
    private final DriftFigure pictures;

    /** Words it with a rulebook. */
    public LogPage(Rulebook rulebook) {
        this.wording = new Wording(rulebook);
        this.words = new LogWriter(rulebook);
        this.pictures = new DriftFigure(words);
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
        Markup page = PageFrame.begin(name);
        page.leaf("a", "To the pictures", "href", "#drift-0-station", "class", "skip");
        page.open("header");
        page.leaf("p", file, "class", "file");
        page.leaf("h1", name);
        page.close();
        page.open("main");
        PageFrame.caution(page, wording, PageFrame.FIRST);
        head(page, told);
        contents(page, told.drifts());
        for (int i = 0; i < told.drifts().size(); i++) {
            pictures.write(page, told, i);
        }
        impossible(page, told.impossible());
        page.close();
        page.open("footer");
        PageFrame.caution(page, wording, PageFrame.AGAIN);
        page.close();
        return PageFrame.end(page);
    }

    private void head(Markup page, LogStudy.Told told) {
        List<String> lines = words.verdict(told);
        page.open("section", "class", "head", "aria-label", "What changes");
        page.leaf(
                "p",
                DriftFigure.capital(lines.get(0)),
                "class",
                "verdict is-" + (told.growing() == null ? "none" : "warning"));
        lines.subList(1, lines.size()).forEach(line -> page.leaf("p", line));
        page.leaf("p", LogWriter.span(told) + ". Told as a change since the first days.", "class", "counts");
        page.close();
    }

    private static void contents(Markup page, List<Drift> drifts) {
        page.open("nav", "aria-label", "On this page").open("ol");
        for (int i = 0; i < drifts.size(); i++) {
            page.open("li")
                    .leaf("a", DriftFigure.capital(LogWriter.name(drifts.get(i))), "href", "#drift-" + i + "-station")
                    .close();
        }
        page.close().close();
    }

    private void impossible(Markup page, List<ImpossibleReading> impossible) {
        if (!impossible.isEmpty()) {
            page.open("section", "class", "list").leaf("h2", "Left out");
            page.leaf(
                    "p",
                    impossible.size() + " readings cannot be on this plant, whatever is wrong with it: "
                            + PlainText.of(impossible.get(0).reading().path())
                            + (impossible.size() > 1 ? " and others." : "."));
            page.close();
        }
    }
}
