package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.design.Design;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.report.Plainly;
import org.leat.report.YearWriter;
import org.leat.season.DesignYear;
import org.leat.season.FlowSeries;
import org.leat.season.SeriesFault;
import org.leat.season.SeriesReader;
import org.leat.season.SeriesReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat year}. */
@Command(
        name = "year",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Runs a design through a year of its stream, hour by hour.")
final class YearCommand implements Callable<Integer> {

    private static final long LARGEST = 16L << 20;

    @Parameters(paramLabel = "FILE", description = "A design file, YAML or JSON.")
    private String file = "";

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
            names = "--visit",
            paramLabel = "DAYS",
            defaultValue = "7",
            description = "Days from one visit to the next: nozzles are changed on a visit only; 7 if not said.")
    private int visit = 7;

    @Option(
            names = "--longest-gap",
            paramLabel = "DAYS",
            defaultValue = "7",
            description = "Days without a flow that are filled straight between their neighbours; 7 if not said.")
    private int longestGap = SeriesReader.USUAL_GAP;

    @Mixin
    private TextOrJson format = new TextOrJson();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        boolean json = format.json();
        if (!(share > 0 && share <= 1000)) {
            throw new ParameterException(spec.commandLine(), "--share is above 0 and at most 1000");
        }
        if (visit < 1 || longestGap < 0) {
            throw new ParameterException(spec.commandLine(), "--visit is 1 or more days, --longest-gap 0 or more");
        }
        PrintWriter err = spec.commandLine().getErr();
        Reading reading = PlantFile.read(file);
        Design design = reading.design();
        PlantFile.tell(reading.problems(), err);
        if (design == null) {
            return ExitCode.UNREADABLE;
        }
        FlowSeries series = flow == null ? null : series(flow, err);
        if (flow != null && series == null) {
            return ExitCode.UNREADABLE;
        }
        DesignYear year = DesignYear.of(Plant.of(design), series, visit);
        if (year instanceof DesignYear.Open open) {
            err.print("leat: no year without " + open.path().substring(1).replace('/', '.') + ": " + open.why() + "\n");
            return ExitCode.NOT_JUDGED;
        }
        DesignYear.Told told = (DesignYear.Told) year;
        YearWriter writer =
                new YearWriter(Checker.of(List.of(new BuiltInPack())).rulebook());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            writer.json(told, design.battery().chemistry(), out);
        } else {
            writer.text(Plainly.of(file), told, design.battery().chemistry(), out);
        }
        return ExitCode.NOTHING;
    }

    private @Nullable FlowSeries series(Path from, PrintWriter err) throws IOException {
        if (!Files.isRegularFile(from) || Files.size(from) > LARGEST) {
            err.print(Plainly.of(from.toString()) + ": "
                    + (Files.isRegularFile(from) ? "larger than 16 MB" : "no such file, or no ordinary one") + "\n");
            return null;
        }
        SeriesReading read = SeriesReader.read(Files.readString(from, StandardCharsets.ISO_8859_1), longestGap);
        for (SeriesFault fault : read.faults()) {
            err.print(Plainly.of(from + ":" + fault.line() + ": " + fault.what()) + "\n");
        }
        return read.series() == null ? null : read.series().times(share);
    }
}
