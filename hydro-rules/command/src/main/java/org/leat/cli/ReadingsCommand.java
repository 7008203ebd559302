package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.leat.check.Checker;
import org.leat.pack.BuiltInPack;
import org.leat.readings.Diagnosis;
import org.leat.readings.FaultKind;
import org.leat.readings.FaultTable;
import org.leat.readings.TakenReadings;
import org.leat.report.ReadingsWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat readings DESIGN FILE}. */
@Command(
        name = "readings",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Tells what is wrong with a running plant by what was read on it.",
            "Sets it against what the design lets one expect, tells how sure that is, and what to read",
            "next. Exits with 1 where something is, with 4 where nothing was read that tells."
        })
final class ReadingsCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "DESIGN", description = "The design file.")
    private String design = "";

    @Parameters(
            index = "1",
            paramLabel = "READINGS",
            description = "The file of readings, YAML, JSON or CSV; start --empty-readings writes an empty one.")
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
        return ReadAtPlant.read(design, file, err, read -> told(read, json));
    }

    private int told(ReadAtPlant read, boolean json) throws IOException {
        TakenReadings taken = read.taken();
        Diagnosis diagnosis = Diagnosis.of(FaultTable.of(read.expected()), taken.readings());
        ReadingsWriter writer = new ReadingsWriter(
                read.expected(),
                Checker.of(List.of(new BuiltInPack())).rulebook(),
                read.file().positions());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            writer.json(taken, diagnosis, out);
        } else {
            writer.text(taken, diagnosis, out);
        }
        if (taken.readings().isEmpty() && taken.impossible().isEmpty()) {
            return ExitCode.NOT_JUDGED;
        }
        boolean sound = diagnosis.ranked().get(0).kind() == FaultKind.NOTHING
                && !diagnosis.unexplained()
                && diagnosis.dangers().isEmpty()
                && taken.impossible().isEmpty();
        return sound ? ExitCode.NOTHING : ExitCode.FOUND;
    }
}
