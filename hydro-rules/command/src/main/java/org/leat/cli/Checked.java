package org.leat.cli;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.Examined;
import org.leat.check.Report;
import org.leat.choice.Overview;
import org.leat.file.Reading;
import org.leat.report.ReportWriter;
import org.leat.report.Tally;
import org.leat.sure.Sureness;

/** What came of one design: one file never stops the rest. */
sealed interface Checked {

    /** {@return what comes of checking a design} In any thread. */
    static Checked of(Checker checker, DesignSource source, boolean overviewWanted, boolean howSure) {
        try {
            Reading reading = source.read();
            Examined examined = checker.examined(reading);
            Overview overview = overviewWanted ? Overview.of(examined, checker.rulebook()) : null;
            Sureness sureness = howSure ? Sureness.of(examined) : null;
            return new Whole(reading, examined.report(), overview, sureness);
        } catch (RuntimeException | Error e) {
            return new Broken(source.name(), CheckCommand.cause(e));
        }
    }

    /** Writes it, and counts it. */
    void tell(ReportWriter writer, Tally tally) throws IOException;

    /** It was checked, or could not be read as a design. */
    record Whole(
            Reading reading,
            Report report,
            @Nullable Overview overview,
            @Nullable Sureness sureness) implements Checked {

        @Override
        public void tell(ReportWriter writer, Tally tally) throws IOException {
            tally.add(report);
            if (overview == null) {
                writer.add(report, reading);
            } else if (sureness != null) {
                writer.add(report, reading, overview, sureness);
            } else {
                writer.add(report, reading, overview);
            }
        }
    }

    /** Something broke over it. */
    record Broken(String source, String cause) implements Checked {

        @Override
        public void tell(ReportWriter writer, Tally tally) throws IOException {
            tally.addBroken();
            writer.broken(source, cause);
        }
    }
}
