package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.file.DesignReader;
import org.leat.file.PartsFinder;
import org.leat.file.Reading;
import org.leat.report.mending.Mended;
import org.leat.report.mending.MendedText;
import org.leat.report.mending.Mending;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code leat mend FILE…}. */
@Command(
        name = "mend",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Shows which values of design files would take failures away, and with --write changes them.",
            "Comments, layout and line ends stay. Exits as check would over the changed files."
        })
final class MendCommand implements Callable<Integer> {

    @Mixin
    private DesignArguments designs = new DesignArguments();

    @Option(names = "--write", description = "Writes the changes into the files.")
    private boolean write;

    @Option(
            names = "--from",
            paramLabel = "error|warning|note",
            defaultValue = "warning",
            converter = OptionWords.OfLevel.class,
            description = "The least level of a failure to be mended; warning if not said.")
    private Level from = Level.WARNING;

    @Option(
            names = "--rule",
            paramLabel = "RULE",
            description = "Only failures of this rule. May be given several times.")
    private List<String> rules = List.of();

    @Mixin
    private Judging judging = new Judging();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        List<DesignSource> sources = designs.sources();
        if (sources.stream().anyMatch(s -> s.file() == null)) {
            throw new ParameterException(spec.commandLine(), "standard input cannot be mended: name the file");
        }
        Checker checker = judging.checker();
        for (String rule : rules) {
            String unknown = ExplainCommand.unknown(checker.rulebook(), rule);
            if (unknown != null) {
                throw new ParameterException(spec.commandLine(), unknown);
            }
        }
        PrintWriter out = spec.commandLine().getOut();
        MendedText text = new MendedText(checker.rulebook(), out, Terminals.width());
        text.begin();
        int code = ExitCode.NOTHING;
        int changes = 0;
        for (DesignSource source : sources) {
            Path file = Objects.requireNonNull(source.file());
            Outcome outcome = mend(checker, file, text);
            code = Math.max(code, outcome.code());
            changes += outcome.changes();
            if (out.checkError()) {
                break;
            }
        }
        if (changes > 0) {
            text.say(
                    write
                            ? changes + (changes == 1 ? " value changed." : " values changed.")
                            : "Nothing is written yet: --write writes "
                                    + (changes == 1 ? "this change." : "these " + changes + " changes."));
            text.caution();
        }
        text.end();
        return code;
    }

    private record Outcome(int code, int changes) {}

    private Outcome mend(Checker checker, Path file, MendedText text) throws IOException {
        try {
            byte[] content = Files.isRegularFile(file) ? Files.readAllBytes(file) : new byte[0];
            Reading reading = content.length == 0
                    ? DesignReader.read(file)
                    : DesignReader.read(content, file.toString(), parts(file));
            Set<String> only = new TreeSet<>(rules);
            Mending.Reader reader = changed ->
                    changed.equals(reading.text()) ? reading : DesignReader.read(changed, file.toString(), parts(file));
            Mended mended = Mending.of(checker, reading.text(), reader, from, only);
            text.add(file.toString(), mended);
            if (!mended.after().readable()) {
                return new Outcome(ExitCode.UNREADABLE, 0);
            }
            int judged = mended.after().broke()
                    ? ExitCode.NOT_JUDGED
                    : mended.after().findings().stream().anyMatch(f -> f.failsAt(judging.failOn()))
                            ? ExitCode.FOUND
                            : ExitCode.NOTHING;
            if (write && !mended.steps().isEmpty()) {
                InPlace.write(file, content, mended.text());
            }
            return new Outcome(judged, mended.steps().size());
        } catch (RuntimeException | Error | IOException e) {
            // one file never stops the rest
            text.say(file + " is left as it is: " + CheckCommand.cause(e));
            return new Outcome(ExitCode.NOT_JUDGED, 0);
        }
    }

    private static PartsFinder parts(Path file) {
        Path folder = file.getParent();
        return PartsFinder.within(folder == null ? Path.of("") : folder);
    }
}
