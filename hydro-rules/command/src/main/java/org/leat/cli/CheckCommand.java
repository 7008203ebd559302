package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Rulebook;
import org.leat.file.Filled;
import org.leat.page.PageWriter;
import org.leat.readings.PlantLog;
import org.leat.report.JUnitWriter;
import org.leat.report.JsonWriter;
import org.leat.report.MarkdownWriter;
import org.leat.report.PlainText;
import org.leat.report.ReportWriter;
import org.leat.report.SarifWriter;
import org.leat.report.SarifWriter.SarifCall;
import org.leat.report.Tally;
import org.leat.report.TextWriter;
import org.leat.report.TextWriter.Colours;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code leat check FILE…}. */
@Command(
        name = "check",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Checks design files and reports.")
final class CheckCommand implements Callable<Integer> {

    /** Characters that are told of what an error says of itself. */
    private static final int LONGEST_CAUSE = 500;

    @Mixin
    private DesignArguments designs = new DesignArguments();

    @Option(
            names = "--format",
            paramLabel = "text|json|sarif|junit|markdown|html",
            defaultValue = "text",
            converter = OptionWords.OfFormat.class,
            description = "What the report is written in; text if not said.")
    private Format format = Format.TEXT;

    @Option(
            names = "--also",
            paramLabel = "FORMAT=FILE",
            converter = AdditionalReport.Converter.class,
            description = {
                "Writes the report to a file too. May be given several times.",
                "html=FOLDER/ writes a page for each design, and an index."
            })
    private List<AdditionalReport> also = new ArrayList<>();

    @Option(
            names = "--whole",
            description = "All there is: with text every finding, table and open question behind the first screen; with"
                    + " json that screen too.")
    private boolean whole;

    @Option(
            names = "--how-sure",
            description =
                    "With text and json: how probably each verdict fails, by stated tolerances and assumed ranges."
                            + " Solves each plant some thousand times.")
    private boolean howSure;

    @Option(
            names = "--log",
            paramLabel = "LOG",
            description = "With html of one design: what its log of readings tells over time, with pictures.")
    private @Nullable String log;

    private @Nullable PlantLog entries;

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
            converter = OptionWords.OfColour.class,
            description = "Colour in text; auto: on a terminal, unless NO_COLOR is set.")
    private Colour colour = Colour.AUTO;

    @Mixin
    private Judging judging = new Judging();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (problemsOnly && format != Format.SARIF && also.stream().noneMatch(a -> a.format() == Format.SARIF)) {
            throw new ParameterException(spec.commandLine(), "--problems-only goes with the format sarif");
        }
        List<DesignSource> sources = designs.sources();
        if (log != null && !readLog(log, sources)) {
            return ExitCode.UNREADABLE;
        }
        Map<Path, Format> files = files(sources);
        Checker checker = judging.checker();
        Tally tally = new Tally();
        PrintWriter out = spec.commandLine().getOut();
        try (Outputs outputs = Outputs.begin(
                format, out, files, (f, to, person) -> writer(f, checker.rulebook(), to, person, tally))) {
            for (AdditionalReport pages : also) {
                if (pages.folder() && pages.format() == Format.HTML) {
                    outputs.folder(
                            pages.file(),
                            checker.rulebook(),
                            sources.stream().map(DesignSource::name).toList());
                }
            }
            check(checker, sources, outputs, tally);
            outputs.end();
        } catch (Outputs.CannotWriteException e) {
            if (!e.begun()) {
                throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
            }
            out.flush();
            spec.commandLine().getErr().print("leat: " + PlainText.of(String.valueOf(e.getMessage())) + "\n");
            return ExitCode.NOT_JUDGED;
        }
        leftAside(designs.leftAside(), "hold no part of a plant");
        leftAside(designs.noFiles(), "are no ordinary files");
        return code(tally);
    }

    /** {@return whether the log can be read} Says why not. */
    private boolean readLog(String name, List<DesignSource> sources) {
        boolean page =
                format == Format.HTML || also.stream().anyMatch(one -> one.format() == Format.HTML && !one.folder());
        if (!page || sources.size() > 1) {
            throw new ParameterException(spec.commandLine(), "--log goes with a page of one design: --also html=FILE");
        }
        Filled<PlantLog> read = Tables.read(PlantLog.class, "entries", name);
        PlantFile.tell(read.problems(), spec.commandLine().getErr());
        entries = read.record();
        return entries != null;
    }

    private void leftAside(List<Path> files, String why) {
        if (!files.isEmpty()) {
            spec.commandLine().getOut().flush();
            spec.commandLine()
                    .getErr()
                    .print("leat: left aside, for they " + why + ": " + PlainText.of(DesignArguments.told(files))
                            + "\n");
        }
    }

    private void check(Checker checker, List<DesignSource> sources, ReportWriter writer, Tally tally)
            throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Progress progress = new Progress(spec.commandLine().getErr(), sources.size(), Terminals.forErrorsOnly());
        boolean wanted = overviewsWanted();
        InOrder.each(
                sources,
                Runtime.getRuntime().availableProcessors(),
                source -> Checked.of(checker, source, wanted || howSure, howSure),
                checked -> {
                    checked.tell(writer, tally);
                    progress.step();
                    // nobody reads on: a full disk, a reader that went away
                    return !also.isEmpty() || !out.checkError();
                });
        progress.end();
    }

    /** Overviews cost time: they are made where one of the outputs shows them. */
    private boolean overviewsWanted() {
        return Stream.concat(Stream.of(format), also.stream().map(AdditionalReport::format))
                .anyMatch(f -> f == Format.TEXT || f == Format.HTML || (whole && f == Format.JSON));
    }

    /** {@return what broke, without where} */
    static String cause(Throwable e) {
        String said = e.getMessage();
        return e.getClass().getSimpleName()
                + (said == null
                        ? ""
                        : ": " + (said.length() > LONGEST_CAUSE ? said.substring(0, LONGEST_CAUSE) + "…" : said));
    }

    private Map<Path, Format> files(List<DesignSource> sources) {
        Map<Path, Format> files = new LinkedHashMap<>();
        if (format == Format.HTML) {
            onePage(sources);
        }
        for (AdditionalReport one : also) {
            if (one.format() == Format.HTML) {
                if (one.folder()) {
                    continue;
                }
                onePage(sources);
            }
            Path file = one.file().toAbsolutePath().normalize();
            boolean design = sources.stream()
                    .map(DesignSource::file)
                    .anyMatch(s -> s != null && s.toAbsolutePath().normalize().equals(file));
            if (design || files.put(file, one.format()) != null) {
                throw new ParameterException(
                        spec.commandLine(),
                        one.file() + (design ? " is a design that is checked" : " is to be written twice"));
            }
        }
        return files;
    }

    private void onePage(List<DesignSource> sources) {
        if (sources.size() > 1) {
            throw new ParameterException(
                    spec.commandLine(),
                    "a page holds one design, and these are " + sources.size() + ": write --also html=FOLDER/");
        }
    }

    private int code(Tally tally) {
        if (tally.broke() || (judgeAll && tally.count(Kind.OPEN) > 0)) {
            return ExitCode.NOT_JUDGED;
        }
        if (tally.unreadable() > 0) {
            return ExitCode.UNREADABLE;
        }
        return tally.failsAt(judging.failOn()) ? ExitCode.FOUND : ExitCode.NOTHING;
    }

    private ReportWriter writer(Format as, Rulebook rulebook, Appendable to, boolean person, Tally tally)
            throws IOException {
        return switch (as) {
            case TEXT ->
                new TextWriter(
                        rulebook,
                        to,
                        person ? colour.colours(System.getenv()) : Colours.NONE,
                        person ? Terminals.width() : Terminals.WIDEST,
                        whole);
            case JSON -> new JsonWriter(rulebook, to, whole);
            case JUNIT -> new JUnitWriter(rulebook, to, judging.failOn());
            case MARKDOWN -> new MarkdownWriter(rulebook, to);
            case HTML -> {
                PageWriter page = new PageWriter(rulebook, to);
                yield entries == null ? page : page.withLog(entries, PlainText.of(String.valueOf(log)));
            }
            case SARIF ->
                new SarifWriter(
                        rulebook,
                        to,
                        Version.number(),
                        problemsOnly,
                        new SarifCall(spec.commandLine().getParseResult().originalArgs(), () -> code(tally)),
                        Version.pages());
        };
    }
}
