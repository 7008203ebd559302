package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Report;
import org.leat.design.Design;
import org.leat.file.Reading;
import org.leat.page.StartPage;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.FirstStart;
import org.leat.readings.FirstStart.StartStep;
import org.leat.report.ReadingsFile;
import org.leat.report.StartSheet;
import org.leat.report.StopLimits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat start DESIGN}. */
@Command(
        name = "start",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Writes the sheet of a careful first start.",
            "Each step with what to read, what to expect, its range, and when to stop. Exits as check would: a design that fails is not to be started."
        })
final class StartCommand implements Callable<Integer> {

    @Parameters(paramLabel = "DESIGN", description = "The design file.")
    private String file = "";

    @Option(
            names = "--format",
            paramLabel = "text|json|html",
            defaultValue = "text",
            converter = OptionWords.OfFormat.class,
            description = "What is written; text if not said. html is a page for phone and paper.")
    private Format format = Format.TEXT;

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
        if (format != Format.TEXT && format != Format.JSON && format != Format.HTML) {
            throw new ParameterException(spec.commandLine(), "start writes text, json or html");
        }
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
        switch (format) {
            case JSON -> sheet.json(report, steps, out);
            case HTML -> new StartPage(checker.rulebook()).write(report, steps, out);
            default -> sheet.text(report, steps, out);
        }
        if (!StopLimits.failing(report).isEmpty()) {
            return ExitCode.FOUND;
        }
        return StopLimits.unsettled(report, checker.rulebook()).stream()
                        .allMatch(finding -> finding.outcome().kind() == Kind.FAIL)
                ? ExitCode.NOTHING
                : ExitCode.NOT_JUDGED;
    }
}
