package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.leat.report.PlainText;
import org.leat.season.FlowSeries;
import org.leat.season.SeriesReader;
import org.leat.season.SeriesReading;
import org.leat.season.SeriesReading.SeriesFault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The options of commands that run a year: daily flows in place of the stream of the design. */
@Command(addMethodSubcommands = false)
final class DailyFlows {

    private static final long LARGEST = 16L << 20;

    @Option(
            names = "--flow",
            paramLabel = "SERIES",
            description = "Daily flows, CSV with the head line date,flow_l_s, or the tab-separated form of a national"
                    + " water service; if not said, the stream of the design.")
    private @Nullable Path flow;

    @Option(
            names = "--share",
            paramLabel = "SHARE",
            defaultValue = "1",
            description = "Takes this share of each flow, as of a part of the gauged catchment; 1 if not said.")
    private double share = 1;

    @Option(
            names = "--longest-gap",
            paramLabel = "DAYS",
            defaultValue = "7",
            description = "Days without a flow that are filled straight between their neighbours; 7 if not said.")
    private int longestGap = SeriesReader.USUAL_GAP;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec command;

    /** Refuses what no series can be read with. */
    void demand() {
        if (!(share > 0 && share <= 1000)) {
            throw new ParameterException(command.commandLine(), "--share is above 0 and at most 1000");
        }
        if (longestGap < 0) {
            throw new ParameterException(command.commandLine(), "--longest-gap is 0 or more days");
        }
    }

    /** {@return whether a series is asked for} */
    boolean asked() {
        return flow != null;
    }

    /** {@return the series asked for; null where none is, or after a problem is told} */
    @Nullable
    FlowSeries read(PrintWriter err) throws IOException {
        Path from = flow;
        if (from == null) {
            return null;
        }
        if (!Files.isRegularFile(from) || Files.size(from) > LARGEST) {
            err.print(PlainText.of(from.toString()) + ": "
                    + (Files.isRegularFile(from) ? "larger than 16 MB" : "no such file, or no ordinary one") + "\n");
            return null;
        }
        SeriesReading read = SeriesReader.read(Files.readString(from, StandardCharsets.ISO_8859_1), longestGap);
        for (SeriesFault fault : read.faults()) {
            err.print(PlainText.of(from + ":" + fault.line() + ": " + fault.what()) + "\n");
        }
        return read.series() == null ? null : read.series().times(share);
    }
}
