package org.leat.report;

import java.io.IOException;
import org.apiguardian.api.API;
import org.leat.check.Report;
import org.leat.choice.Overview;
import org.leat.file.Reading;
import org.leat.sure.Sureness;

/** Writes reports one after the other, so that a long run needs no more memory than a short one. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public interface ReportWriter {

    /** Writes one design's report. */
    void add(Report report) throws IOException;

    /**
     * Writes the report of one design file, for formats that also show how the file would be changed.
     *
     * @param reading the file as it was read
     */
    default void add(Report report, Reading reading) throws IOException {
        add(report);
    }

    /**
     * Writes the report of one design file, for formats that begin with what matters first.
     *
     * @param reading the file as it was read
     * @param overview the design at a glance
     */
    default void add(Report report, Reading reading, Overview overview) throws IOException {
        add(report, reading);
    }

    /**
     * Writes the report of one design file, for formats that say how sure it is.
     *
     * @param reading the file as it was read
     * @param overview the design at a glance
     * @param sureness how sure the verdicts are
     */
    default void add(Report report, Reading reading, Overview overview, Sureness sureness) throws IOException {
        add(report, reading, overview);
    }

    /**
     * Writes that this program broke over a file, so that it was not checked.
     *
     * @param cause in a few words
     */
    void broken(String file, String cause) throws IOException;

    /** Writes what closes the document; nothing may follow. */
    void end() throws IOException;
}
