package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.leat.readings.Diagnosis;
import org.leat.readings.FaultKind;
import org.leat.readings.FaultTable;
import org.leat.readings.ImpossibleReading;
import org.leat.readings.TakenReadings;
import org.leat.report.Learned;
import org.leat.report.ReadingsWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat learn DESIGN READINGS}. */
@Command(
        name = "learn",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Shows which values of a design were measured at the water, and writes them into it.",
            "With --write they go into its file, with the day. Comments, layout and line ends stay. Readings of a sound plant only: a fault",
            "would be learned too."
        })
final class LearnCommand implements Callable<Integer> {

    /** Less likely than that, "nothing wrong" is no answer to build on. */
    private static final double AS_LIKELY_AS_NOT = 0.5;

    /** Faults that are less likely are not told. */
    private static final double TOLD = 0.1;

    @Parameters(index = "0", paramLabel = "DESIGN", description = "The design file.")
    private Path design = Path.of("");

    @Parameters(index = "1", paramLabel = "READINGS", description = "The file of readings.")
    private String file = "";

    @Option(names = "--write", description = "Writes the values into the design file.")
    private boolean write;

    @Option(names = "--even-so", description = "Writes them although the readings say that something is wrong.")
    private boolean evenSo;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        byte[] content = Files.isRegularFile(design) ? Files.readAllBytes(design) : new byte[0];
        return ReadAtPlant.read(design.toString(), file, err, read -> learned(read, content));
    }

    private int learned(ReadAtPlant read, byte[] content) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        TakenReadings taken = read.taken();
        for (ImpossibleReading cannot : taken.impossible()) {
            err.print(
                    read.file().positions().of(cannot.reading().path()) + ": " + ReadingsWriter.cannot(cannot) + "\n");
        }
        if (taken.readings().isEmpty()) {
            err.print("leat: no reading is here, or left, that a design could learn from\n");
            return taken.impossible().isEmpty() ? ExitCode.NOT_JUDGED : ExitCode.FOUND;
        }
        String fault = fault(Diagnosis.of(FaultTable.of(read.expected()), taken.readings()));
        boolean wrong = !fault.isEmpty();
        if (wrong) {
            err.print("leat: these readings say: " + fault
                    + "; learned as it stands, the design would be that of the fault\n");
        }
        if (wrong && write && !evenSo) {
            err.print("leat: nothing is written; mend and read again, or write --even-so\n");
            return ExitCode.FOUND;
        }
        Learned.Lesson lesson = Learned.of(read.design(), read.expected(), read.readings(), taken);
        Lessons.tell(design, lesson, content, write, out, err);
        return wrong || !taken.impossible().isEmpty() ? ExitCode.FOUND : ExitCode.NOTHING;
    }

    /** What the readings say is wrong, one or the other fault; "" where most likely nothing is. */
    private static String fault(Diagnosis diagnosis) {
        if (diagnosis.unexplained()) {
            return "something is wrong that no single fault explains";
        }
        double sound = diagnosis.ranked().stream()
                .filter(ranked -> ranked.kind() == FaultKind.NOTHING)
                .mapToDouble(Diagnosis.Ranked::probability)
                .sum();
        boolean first = diagnosis.ranked().get(0).kind() == FaultKind.NOTHING;
        if (first && sound >= AS_LIKELY_AS_NOT) {
            return "";
        }
        return diagnosis.ranked().stream()
                .filter(ranked -> ranked.kind() != FaultKind.NOTHING && ranked.probability() >= TOLD)
                .map(ranked -> ReadingsWriter.name(ranked.kind()))
                .collect(Collectors.collectingAndThen(
                        Collectors.joining(", or "), told -> told.isEmpty() ? "something is wrong" : told));
    }
}
