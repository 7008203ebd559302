package org.leat.page;

import org.jspecify.annotations.Nullable;
import org.leat.check.Rulebook;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.FaultTable;
import org.leat.readings.LogStudy;
import org.leat.readings.PlantLog;
import org.leat.report.LogWriter;

/**
 * What a log of readings tells of a plant, on the plant's own page: what grows and when somebody should look, with a picture of the
 * fault that explains the changes best.
 *
 * @param told by the log; null where the plant cannot be solved or the log holds no reading of it
 * @param file the log's name
 * @param rulebook of the words
 */
record LogOnPage(LogStudy.@Nullable Told told, String file, Rulebook rulebook) {

    static final String ID = "over-time";
    static final String TITLE = "Over time";

    static LogOnPage of(Plant plant, PlantLog log, String file, Rulebook rulebook) {
        LogStudy.Told told = plant.unsolvable().isEmpty()
                ? LogStudy.of(FaultTable.of(Expectations.of(plant)), log).orElse(null)
                : null;
        return new LogOnPage(told, file, rulebook);
    }

    void write(Markup page) {
        page.open("section", "class", "list", "id", ID).leaf("h2", TITLE);
        page.leaf("p", "By its log, " + file + ".", "class", "look");
        if (told == null) {
            page.leaf("p", "No picture: the log holds no reading of this plant, or the plant cannot be solved.");
            page.close();
            return;
        }
        LogWriter words = new LogWriter(rulebook);
        words.verdict(told).forEach(line -> page.leaf("p", DriftFigure.capital(line)));
        page.leaf("p", LogWriter.span(told) + ". Told as a change since the first days.");
        if (!told.impossible().isEmpty()) {
            page.leaf("p", told.impossible().size() + " readings that cannot be are left out.");
        }
        page.close();
        new DriftFigure(words).write(page, told, 0);
    }
}
