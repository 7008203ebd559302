package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.leat.check.Checker;
import org.leat.check.Rulebook;
import org.leat.design.Design;
import org.leat.file.Filled;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.page.LogPage;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.FaultTable;
import org.leat.readings.ImpossibleReading;
import org.leat.readings.LogStudy;
import org.leat.readings.PlantLog;
import org.leat.readings.TakenReadings;
import org.leat.report.LogWriter;
import org.leat.report.ReadingsWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat log DESIGN FILE}. */
@Command(
        name = "log",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Tells what changes on a plant over months of readings, and by when to look after it.",
            "How fast it does, when its limit is met, and by which day somebody should look. Exits with 1 where something grows."
        })
final class LogCommand implements Callable<Integer> {

    /** Readings that cannot be that are told each. */
    private static final int MOST = 20;

    @Parameters(index = "0", paramLabel = "DESIGN", description = "The design file.")
    private String design = "";

    @Parameters(index = "1", paramLabel = "LOG", description = "The log, CSV, YAML or JSON, each line with its day.")
    private String file = "";

    @Option(
            names = "--format",
            paramLabel = "text|json|html",
            defaultValue = "text",
            converter = OptionWords.OfFormat.class,
            description = "What is written; text if not said; html is a page with a picture of each fault over time.")
    private Format format = Format.TEXT;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (format != Format.TEXT && format != Format.JSON && format != Format.HTML) {
            throw new ParameterException(spec.commandLine(), spec.name() + " writes text, json or html");
        }
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
        for (TakenReadings.Misplaced one : LogStudy.unknownSets(table, log)) {
            err.print(read.positions().of(one.path()) + ": " + PlantFile.said(one) + "; left out\n");
        }
        LogStudy.Told told = LogStudy.of(table, log).orElse(null);
        if (told == null) {
            err.print("leat: the log holds no reading of this plant\n");
            return ExitCode.NOT_JUDGED;
        }
        for (ImpossibleReading cannot :
                told.impossible().subList(0, Math.min(MOST, told.impossible().size()))) {
            err.print(read.positions().of(cannot.reading().path()) + ": " + ReadingsWriter.cannot(cannot) + "\n");
        }
        if (told.impossible().size() > MOST) {
            err.print("leat: and " + (told.impossible().size() - MOST) + " more that cannot be\n");
        }
        Rulebook rulebook = Checker.of(List.of(new BuiltInPack())).rulebook();
        PrintWriter out = spec.commandLine().getOut();
        switch (format) {
            case HTML -> out.append(new LogPage(rulebook).written(told, name(built), file));
            case JSON -> new LogWriter(rulebook).json(told, out);
            default -> new LogWriter(rulebook).text(told, out);
        }
        if (!told.judged()) {
            return ExitCode.NOT_JUDGED;
        }
        return told.growing() == null ? ExitCode.NOTHING : ExitCode.FOUND;
    }

    private String name(Design built) {
        String name = built.name();
        return name == null ? design : name;
    }
}
