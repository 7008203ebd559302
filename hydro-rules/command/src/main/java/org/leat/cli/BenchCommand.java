package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.design.Design;
import org.leat.file.Filled;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.readings.BenchReadings;
import org.leat.readings.MotorBench;
import org.leat.report.BenchWriter;
import org.leat.report.Learned;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat bench READINGS}. */
@Command(
        name = "bench",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Tells a motor's constants from readings on the bench, and what is wrong with it.",
            "Each constant with its uncertainty; what is wrong may lie in the readings. With --design against what a design states, and what would go into",
            "its file, which --write writes. Exits with 1 where something is wrong, with 4 where nothing is there that would show it."
        })
final class BenchCommand implements Callable<Integer> {

    @Parameters(
            arity = "0..2",
            paramLabel = "READINGS",
            description = {
                "The file of readings, YAML, JSON or CSV; --empty-readings writes an empty one.",
                "Of two files the first is the design."
            })
    private List<String> files = List.of();

    @Option(names = "--design", paramLabel = "FILE", description = "The design that states something of the motor.")
    private @Nullable Path design;

    @Option(names = "--write", description = "Writes the constants into the design file.")
    private boolean write;

    @Option(
            names = "--empty-readings",
            description = "Writes, in place of all else, a file of readings to be filled in.")
    private boolean empty;

    @Mixin
    private TextOrJson format = new TextOrJson();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        boolean json = format.json();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (empty) {
            BenchWriter.empty(out);
            return ExitCode.NOTHING;
        }
        if (files.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "say which file of readings");
        }
        if (files.size() > 2) {
            throw new ParameterException(
                    spec.commandLine(), "more than a design and a file of readings: " + files.get(2));
        }
        if (files.size() == 2 && design != null) {
            throw new ParameterException(
                    spec.commandLine(), "the design is said twice, before the readings and by --design");
        }
        Path into = files.size() == 2 ? Path.of(files.get(0)) : design;
        if (write && into == null) {
            throw new ParameterException(spec.commandLine(), "--write needs --design");
        }
        String file = files.get(files.size() - 1);
        byte[] content = into != null && Files.isRegularFile(into) ? Files.readAllBytes(into) : new byte[0];
        Reading stated = into == null ? null : PlantFile.read(into.toString());
        Filled<BenchReadings> read = Tables.read(BenchReadings.class, "readings", file);
        BenchReadings readings = read.record();
        PlantFile.tell(read.problems(), err);
        if (stated != null) {
            PlantFile.tell(stated.problems(), err);
        }
        Design said = stated == null ? null : stated.design();
        if (readings == null || (stated != null && said == null)) {
            return ExitCode.UNREADABLE;
        }
        MotorBench motor = MotorBench.of(readings, said);
        for (MotorBench.Cannot one : motor.cannot()) {
            err.print(read.positions().of(one.path()) + ": " + BenchWriter.why(one) + "\n");
        }
        BenchWriter writer =
                new BenchWriter(Checker.of(List.of(new BuiltInPack())).rulebook());
        if (json) {
            writer.json(motor, out);
        } else {
            writer.text(motor, out);
        }
        if (into != null && stated != null && (!json || write)) {
            Lessons.tell(into, Learned.of(stated, readings, motor), content, write, json ? err : out, err);
        }
        if (!motor.judged() && motor.cannot().isEmpty()) {
            return ExitCode.NOT_JUDGED;
        }
        boolean sound = motor.first().fault() == MotorBench.Fault.NOTHING
                && !motor.unexplained()
                && motor.cannot().isEmpty();
        return sound ? ExitCode.NOTHING : ExitCode.FOUND;
    }
}
