package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.FailOn;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.report.BaselineReader;
import org.leat.report.JsonWriter;
import org.leat.report.ReportWriter;
import org.leat.report.SarifCall;
import org.leat.report.SarifWriter;
import org.leat.report.Tally;
import org.leat.report.TextWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat check FILE…}. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Checks design files and reports.")
final class CheckCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Design files, YAML or JSON.")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--format",
            paramLabel = "text|json|sarif",
            defaultValue = "text",
            converter = Words.OfFormat.class,
            description = "What the report is written in; text if not said.")
    private Format format = Format.TEXT;

    @Option(
            names = "--fail-on",
            paramLabel = "error|warning|note",
            converter = Words.OfLevel.class,
            description = "The least level that sets exit code 1; if not said, what the settings say, else error.")
    private @Nullable Level failOn;

    @Option(
            names = "--baseline",
            paramLabel = "LOG",
            description = "The SARIF log of an earlier run: what it holds does not count, unless it got worse.")
    private @Nullable Path baseline;

    @Option(
            names = "--today",
            paramLabel = "DAY",
            converter = Words.OfDay.class,
            description = "The day with which last days of suppressions are compared, as 2031-05-30; the clock's if"
                    + " not said.")
    private @Nullable LocalDate today;

    @Option(names = "--judge-all", description = "Exit with 4 if anything could not be judged.")
    private boolean judgeAll;

    @Option(
            names = "--problems-only",
            description = "With sarif: failures, open questions and reviews only, for services that show every result.")
    private boolean problemsOnly;

    @Option(
            names = "--colour",
            paramLabel = "auto|always|never",
            defaultValue = "auto",
            converter = Words.OfColour.class,
            description = "Colour in text; auto: on a terminal, unless NO_COLOR is set.")
    private Colour colour = Colour.AUTO;

    @Mixin
    private CheckerOptions options = new CheckerOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (problemsOnly && format != Format.SARIF) {
            throw new ParameterException(spec.commandLine(), "--problems-only goes with --format sarif");
        }
        PrintWriter out = spec.commandLine().getOut();
        Checker checker = checker();
        Tally tally = new Tally();
        ReportWriter writer = writer(checker.rulebook(), out, tally);
        for (Path file : files) {
            Reading reading;
            Report report;
            try {
                reading = DesignReader.read(file);
                report = checker.check(reading);
            } catch (RuntimeException | StackOverflowError e) {
                // one file never stops the rest
                tally.addBroken();
                writer.broken(file.toString(), cause(e));
                continue;
            }
            tally.add(report);
            writer.add(report, reading);
        }
        writer.end();
        return code(tally);
    }

    private Checker checker() {
        Checker checker = options.checker().on(today == null ? LocalDate.now(ZoneId.systemDefault()) : today);
        if (baseline == null) {
            return checker;
        }
        BaselineReader.Read read = BaselineReader.read(baseline);
        if (!read.problems().isEmpty()) {
            throw new WrongInput(read.problems());
        }
        return checker.against(read.baseline());
    }

    private Level failOn() {
        FailOn set = options.settings().failOn();
        return failOn != null ? failOn : set != null ? set.level() : Level.ERROR;
    }

    /** {@return what broke, without where} */
    static String cause(Throwable e) {
        String said = e.getMessage();
        return e.getClass().getSimpleName() + (said == null ? "" : ": " + said);
    }

    private int code(Tally tally) {
        if (tally.broke() || (judgeAll && tally.count(Kind.OPEN) > 0)) {
            return ExitCode.NOT_JUDGED;
        }
        if (tally.unreadable() > 0) {
            return ExitCode.UNREADABLE;
        }
        return tally.failsAt(failOn()) ? ExitCode.FOUND : ExitCode.NOTHING;
    }

    private ReportWriter writer(Rulebook rulebook, PrintWriter out, Tally tally) throws IOException {
        return switch (format) {
            case TEXT -> new TextWriter(rulebook, out, colour.colours(System.getenv()));
            case JSON -> new JsonWriter(rulebook, out);
            case SARIF ->
                new SarifWriter(
                        rulebook,
                        out,
                        Version.number(),
                        problemsOnly,
                        new SarifCall(spec.commandLine().getParseResult().originalArgs(), () -> code(tally)));
        };
    }
}
