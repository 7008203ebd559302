package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.leat.check.Checker;
import org.leat.check.Report;
import org.leat.design.Design;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.FirstStart;
import org.leat.readings.StartStep;
import org.leat.report.ReadingsFile;
import org.leat.report.StartSheet;
import org.leat.report.StopLimits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat start DESIGN}. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Writes the sheet of a careful first start: each step with what to read, what to expect,",
            "its range, and when to stop. Exits as check would: a design that fails is not to be started."
        })
final class StartCommand implements Callable<Integer> {

    @Parameters(paramLabel = "DESIGN", description = "The design file.")
    private String file = "";

    @Mixin
    private TextOrJson format = new TextOrJson();

    @Option(
            names = "--empty-readings",
            description =
                    "Writes, in place of the sheet, a file of readings to be filled in, for the readings command.")
    private boolean empty;

    @Mixin
    private Judging judging = new Judging();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        boolean json = format.json();
        Reading reading = PlantFile.read(file);
        Design design = reading.design();
        PrintWriter err = spec.commandLine().getErr();
        if (design == null) {
            PlantFile.tell(reading.problems(), err);
            return ExitCode.UNREADABLE;
        }
        Plant plant = PlantFile.solvable(design, err);
        if (plant == null) {
            return ExitCode.NOT_JUDGED;
        }
        PrintWriter out = spec.commandLine().getOut();
        Expectations expected = Expectations.of(plant);
        if (empty) {
            ReadingsFile.empty(expected, out);
            return ExitCode.NOTHING;
        }
        Checker checker = judging.checker();
        Report report = checker.check(reading);
        List<StartStep> steps = FirstStart.of(expected, StopLimits.of(report, plant, checker.rulebook()));
        StartSheet sheet = new StartSheet(checker.rulebook());
        if (json) {
            sheet.json(report, steps, out);
        } else {
            sheet.text(report, steps, out);
        }
        return StopLimits.failing(report).isEmpty()
                ? StopLimits.unsettled(report).isEmpty() ? ExitCode.NOTHING : ExitCode.NOT_JUDGED
                : ExitCode.FOUND;
    }
}
