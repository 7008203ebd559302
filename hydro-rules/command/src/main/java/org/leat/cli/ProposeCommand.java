package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.choice.Proposals;
import org.leat.choice.SiteSurvey;
import org.leat.file.Filled;
import org.leat.file.RecordReader;
import org.leat.pack.BuiltInPack;
import org.leat.report.PlainText;
import org.leat.report.ProposalWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat propose SURVEY}. */
@Command(
        name = "propose",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Proposes the few best plants for a place that has none yet, of parts in usual sizes.",
            "Each is solved, checked and without an error; or it is said why such a plant is the wrong one",
            "there (exit code 1)."
        })
final class ProposeCommand implements Callable<Integer> {

    private static final String STANDARD_INPUT = "-";

    @Parameters(
            paramLabel = "SURVEY",
            description = "A file with site, pipe-length and loads, YAML or JSON; - for standard input.")
    private String file = "";

    @Option(
            names = "--write",
            paramLabel = "FOLDER",
            description = "Writes each proposal as a design file into this folder, with what to measure next; a file"
                    + " that is there is never replaced.")
    private @Nullable Path folder;

    @Mixin
    private TextOrJson format = new TextOrJson();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        boolean json = format.json();
        PrintWriter err = spec.commandLine().getErr();
        Filled<SiteSurvey> read = file.equals(STANDARD_INPUT)
                ? RecordReader.read(SiteSurvey.class, System.in, "standard input")
                : RecordReader.read(SiteSurvey.class, Path.of(file), file);
        PlantFile.tell(read.problems(), err);
        SiteSurvey survey = read.record();
        if (survey == null) {
            return ExitCode.UNREADABLE;
        }
        if (folder != null && Files.exists(folder.resolve(fileName(survey.name(), 1)))) {
            return refused(folder.resolve(fileName(survey.name(), 1)), err);
        }
        Checker checker = Checker.of(List.of(new BuiltInPack()));
        Proposals.Answer answer = Proposals.judgedBy(checker).of(survey);
        List<String> files = List.of();
        if (folder != null && answer instanceof Proposals.Found found) {
            try {
                files = write(folder, survey.name(), found);
            } catch (FileAlreadyExistsException e) {
                return refused(Path.of(String.valueOf(e.getMessage())), err);
            } catch (Outputs.CannotWriteException e) {
                err.print("leat: " + PlainText.of(String.valueOf(e.getMessage())) + "\n");
                return ExitCode.NOT_JUDGED;
            } catch (IOException e) {
                err.print("leat: the folder cannot be written: " + PlainText.of(folder.toString()) + "\n");
                return ExitCode.CALL_WRONG;
            }
        }
        ProposalWriter writer = new ProposalWriter(checker.rulebook());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            writer.json(answer, files, out);
        } else {
            writer.text(PlainText.of(survey.name()), answer, files, out);
        }
        return answer instanceof Proposals.Found ? ExitCode.NOTHING : ExitCode.FOUND;
    }

    private static int refused(Path there, PrintWriter err) {
        err.print("leat: " + PlainText.of(there.toString()) + " is there already; nothing is replaced\n");
        return ExitCode.CALL_WRONG;
    }

    private static List<String> write(Path folder, String name, Proposals.Found found) throws IOException {
        Files.createDirectories(folder);
        Map<Path, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < found.best().size(); i++) {
            texts.put(folder.resolve(fileName(name, i + 1)), found.best().get(i).text());
        }
        NewFiles.write(texts);
        return texts.keySet().stream()
                .map(path -> path.toString().replace('\\', '/'))
                .toList();
    }

    /** Letters and digits of the name, a dash for what is between them, and a number. */
    private static String fileName(String name, int number) {
        String plain = name.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}]+", "-")
                .replaceAll("^-|-$", "");
        String file = plain.isEmpty() ? "proposal" : plain.substring(0, Math.min(60, plain.length()));
        return file + "-" + number + ".yaml";
    }
}
