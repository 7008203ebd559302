package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.leat.check.Checker;
import org.leat.design.Design;
import org.leat.file.Filled;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.FaultTable;
import org.leat.readings.LogStudy;
import org.leat.readings.PlantLog;
import org.leat.report.LogWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat log DESIGN FILE}. */
@Command(
        name = "log",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Tells what changes on a plant over months of readings, how fast, when its limit is met, and by",
            "which day somebody should look. Exits with 1 where something grows."
        })
final class LogCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "DESIGN", description = "The design file.")
    private String design = "";

    @Parameters(index = "1", paramLabel = "LOG", description = "The log, CSV, YAML or JSON, each line with its day.")
    private String file = "";

    @Mixin
    private TextOrJson format = new TextOrJson();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        boolean json = format.json();
        PrintWriter err = spec.commandLine().getErr();
        Reading reading = PlantFile.read(design);
        Filled<PlantLog> read = Tables.read(PlantLog.class, "entries", file);
        Design built = reading.design();
        PlantLog log = read.record();
        PlantFile.tell(reading.problems(), err);
        PlantFile.tell(read.problems(), err);
        if (built == null || log == null) {
            return ExitCode.UNREADABLE;
        }
        Plant plant = PlantFile.solvable(built, err);
        if (plant == null) {
            return ExitCode.NOT_JUDGED;
        }
        FaultTable table = FaultTable.of(Expectations.of(plant));
        LogStudy.Told told = LogStudy.of(table, log).orElse(null);
        if (told == null) {
            err.print("leat: the log holds no reading of this plant\n");
            return ExitCode.NOT_JUDGED;
        }
        LogWriter writer = new LogWriter(Checker.of(List.of(new BuiltInPack())).rulebook());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            writer.json(told, out);
        } else {
            writer.text(told, out);
        }
        return told.growing() == null ? ExitCode.NOTHING : ExitCode.FOUND;
    }
}
