package org.leat.page;

import java.io.IOException;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.choice.Overview;
import org.leat.design.Design;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.readings.PlantLog;
import org.leat.report.ReportWriter;
import org.leat.report.Wording;

/**
 * Writes one design's report as a page: a self-contained HTML file that loads nothing and runs nothing. For several designs a page
 * each and a {@link PageIndex}.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class PageWriter implements ReportWriter {

    private final Appendable out;
    private final Rulebook rulebook;
    private final @Nullable PlantLog log;
    private final String logFile;
    private boolean begun;

    /** Writes to {@code out} in the words of a rulebook. */
    public PageWriter(Rulebook rulebook, Appendable out) {
        this(rulebook, out, null, "");
    }

    private PageWriter(Rulebook rulebook, Appendable out, @Nullable PlantLog log, String logFile) {
        this.rulebook = rulebook;
        this.out = out;
        this.log = log;
        this.logFile = logFile;
    }

    /**
     * {@return a writer of the same page with what a log of the plant tells over time}
     *
     * @param readings the plant's log
     * @param file the log's name
     */
    public PageWriter withLog(PlantLog readings, String file) {
        return new PageWriter(rulebook, out, readings, file);
    }

    /**
     * Writes a report without pictures that need the design.
     *
     * @throws IllegalStateException if a page was written already
     */
    @Override
    public void add(Report report) throws IOException {
        write(report, null, null);
    }

    /**
     * Writes a report with its pictures.
     *
     * @throws IllegalStateException if a page was written already
     */
    @Override
    public void add(Report report, Reading reading) throws IOException {
        write(report, reading.design(), null);
    }

    /**
     * Writes a report with its pictures, what matters first at its head.
     *
     * @throws IllegalStateException if a page was written already
     */
    @Override
    public void add(Report report, Reading reading, Overview overview) throws IOException {
        write(report, reading.design(), overview);
    }

    /**
     * Writes the report of a design that was built in code, with its pictures.
     *
     * @throws IllegalStateException if a page was written already
     */
    public void add(Report report, Design design) throws IOException {
        write(report, design, null);
    }

    @Override
    public void broken(String file, String cause) throws IOException {
        once();
        out.append(Page.broken(file, cause, new Wording(rulebook)));
    }

    @Override
    public void end() throws IOException {}

    private void write(Report report, @Nullable Design design, @Nullable Overview overview) throws IOException {
        once();
        LogOnPage overTime =
                log == null || design == null ? null : LogOnPage.of(Plant.of(design), log, logFile, rulebook);
        out.append(new Page(report, design, overview, overTime, rulebook).written());
    }

    private void once() {
        if (begun) {
            throw new IllegalStateException("a page holds one design");
        }
        begun = true;
    }
}
