package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.leat.check.Checker;
import org.leat.design.Design;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.report.PlainText;
import org.leat.report.YearWriter;
import org.leat.season.DesignYear;
import org.leat.season.FlowSeries;
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
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Runs a design through a year of its stream, hour by hour.")
final class YearCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "A design file, YAML or JSON.")
    private String file = "";

    @Mixin
    private DailyFlows flows = new DailyFlows();

    @Option(
            names = "--visit",
            paramLabel = "DAYS",
            defaultValue = "7",
            description = "Days from one visit to the next: nozzles are changed on a visit only; 7 if not said.")
    private int visit = 7;

    @Mixin
    private TextOrJson format = new TextOrJson();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        boolean json = format.json();
        flows.demand();
        if (visit < 1) {
            throw new ParameterException(spec.commandLine(), "--visit is 1 or more days");
        }
        PrintWriter err = spec.commandLine().getErr();
        Reading reading = PlantFile.read(file);
        Design design = reading.design();
        PlantFile.tell(reading.problems(), err);
        if (design == null) {
            return ExitCode.UNREADABLE;
        }
        FlowSeries series = flows.read(err);
        if (flows.asked() && series == null) {
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
            writer.text(PlainText.of(file), told, design.battery().chemistry(), out);
        }
        return ExitCode.NOTHING;
    }
}
