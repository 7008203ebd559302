package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.design.Gauging;
import org.leat.file.DesignReader;
import org.leat.file.Filled;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;
import org.leat.file.ProblemText;
import org.leat.file.Reading;
import org.leat.file.RecordReader;
import org.leat.pack.BuiltInPack;
import org.leat.plant.derive.Gaugings;
import org.leat.plant.numbers.Amount;
import org.leat.report.GaugingWriter;
import org.leat.report.Wrapping;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat gauge}. */
@Command(
        name = "gauge",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        modelTransformer = ReadingsTyped.Options.class,
        description = "Tells what the readings of a stream come to: its flow, its fall, and how well they are known.")
final class GaugeCommand implements Callable<Integer> {

    private static final String STANDARD_INPUT = "-";

    @Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description = "Readings, YAML or JSON, or a design file with readings in it; - for standard input.")
    private @Nullable String file;

    private final ReadingsTyped typed = new ReadingsTyped();

    @Mixin
    private TextOrJson format = new TextOrJson();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        boolean json = format.json();
        if (typed.any() == (file != null)) {
            throw wrong(
                    file == null
                            ? "name a file with readings, or give readings in options"
                            : "readings come from a file or from options, not from both");
        }
        Gauging gauging = file == null ? fromOptions() : fromFile(file);
        if (gauging == null) {
            return ExitCode.UNREADABLE;
        }
        GaugingWriter writer =
                new GaugingWriter(Checker.of(List.of(new BuiltInPack())).rulebook());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            writer.json(gauging, out);
        } else {
            StringBuilder text = new StringBuilder();
            writer.text(gauging, text);
            out.print(Wrapping.text(text.toString(), Terminals.width()));
        }
        boolean open = Stream.of(Gaugings.flows(gauging), Gaugings.heads(gauging))
                .flatMap(List::stream)
                .anyMatch(one -> one.value() instanceof Amount.Unknown);
        return open ? ExitCode.NOT_JUDGED : ExitCode.NOTHING;
    }

    /** {@return what the options of the table are put into} */
    ReadingsTyped typed() {
        return typed;
    }

    private Gauging fromOptions() {
        String fault = typed.fault();
        if (fault != null) {
            throw wrong(fault);
        }
        Filled<Gauging> read = typed.read();
        Gauging gauging = read.record();
        if (gauging == null) {
            throw wrong(
                    String.join("; ", read.problems().stream().map(typed::word).toList()));
        }
        return gauging;
    }

    private @Nullable Gauging fromFile(String name) throws IOException {
        Filled<Gauging> read = STANDARD_INPUT.equals(name)
                ? RecordReader.read(Gauging.class, System.in, "standard input")
                : RecordReader.read(Gauging.class, Path.of(name), name);
        List<Problem> problems = read.problems();
        if (!STANDARD_INPUT.equals(name)
                && problems.stream()
                        .anyMatch(p -> p.kind() == ProblemKind.UNKNOWN_FIELD
                                && p.path().equals("/site"))) {
            Reading design = DesignReader.read(Path.of(name));
            if (design.design() != null) {
                return Gauging.of(design.design().site());
            }
            problems = design.problems();
        }
        PrintWriter err = spec.commandLine().getErr();
        problems.forEach(problem -> err.print(ProblemText.line(problem) + "\n"));
        return read.record();
    }

    private ParameterException wrong(String why) {
        return new ParameterException(spec.commandLine(), why);
    }
}
