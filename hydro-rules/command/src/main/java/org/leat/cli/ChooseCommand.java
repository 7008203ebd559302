package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.Rulebook;
import org.leat.choice.PartsFront;
import org.leat.choice.PartsSearch;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.PartsFinder;
import org.leat.file.Reading;
import org.leat.page.PartsPage;
import org.leat.plant.Plant;
import org.leat.prices.PriceList;
import org.leat.report.FileChange;
import org.leat.report.PartsWriter;
import org.leat.report.PlainText;
import org.leat.season.FlowClasses;
import org.leat.season.FlowSeries;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat choose}. */
@Command(
        name = "choose",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Finds the sets of parts of a price list that are worth choosing from.",
            "They are without error, and none is cheaper, of more energy in the year and of fewer warnings.",
            "Ends with what it has on an interrupt."
        })
final class ChooseCommand implements Callable<Integer> {

    private static final int LEAST_CHECKS = 1000;
    private static final int ONE_IN = 20;

    @Parameters(paramLabel = "FILE", description = "A design file, YAML or JSON.")
    private String file = "";

    @Option(
            names = "--prices",
            required = true,
            paramLabel = "FILE",
            description = "A price list, YAML or JSON: parts, what they cost, and which fields of the design they set.")
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private Path prices;

    @Mixin
    private DailyFlows flows = new DailyFlows();

    @Option(names = "--warnings", paramLabel = "N", description = "Leaves out sets with more warnings than that.")
    private int warnings = Integer.MAX_VALUE;

    @Option(
            names = "--checks",
            paramLabel = "N",
            description =
                    "Sets judged, after which no change of --mend and no fewer warnings are looked for any more; if not said,"
                            + " one in twenty of all sets, but 1000 at least.")
    private @Nullable Long checks;

    @Option(
            names = "--stop-after",
            paramLabel = "SECONDS",
            description = "Ends with what it has after that time, and tells what is proven by then.")
    private @Nullable Integer seconds;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "How much is done at once; as much as the machine can if not said. The answer is the same.")
    private @Nullable Integer threads;

    @Option(
            names = "--set",
            paramLabel = "NO",
            description = "Shows this one of the sets found: parts, prices, warnings.")
    private @Nullable Integer number;

    @Option(
            names = "--write",
            paramLabel = "FILE",
            description = "Writes the design with the parts of the --set as a new file; comments and layout stay.")
    private @Nullable Path write;

    @Option(
            names = "--mend",
            description =
                    "Finds only the cheapest change of the design after which no error is left; what is not changed costs"
                            + " nothing.")
    private boolean mend;

    @Option(
            names = "--format",
            paramLabel = "text|json|html",
            defaultValue = "text",
            converter = OptionWords.OfFormat.class,
            description = "What is written; text if not said; html is a page with a picture of all sets.")
    private Format format = Format.TEXT;

    @Mixin
    private Judging judging = new Judging();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        demand();
        PrintWriter err = spec.commandLine().getErr();
        Reading reading = PlantFile.read(file);
        PlantFile.tell(reading.problems(), err);
        Design design = reading.design();
        if (design == null) {
            return ExitCode.UNREADABLE;
        }
        PriceList.Read read = PriceList.read(prices, prices.toString(), design);
        PlantFile.tell(read.problems(), err);
        PriceList list = read.list();
        Plant plant = list == null ? null : PlantFile.solvable(design, err);
        if (list == null || plant == null) {
            return list == null ? ExitCode.UNREADABLE : ExitCode.NOT_JUDGED;
        }
        FlowSeries series = flows.read(err);
        if (flows.asked() && series == null) {
            return ExitCode.UNREADABLE;
        }
        Checker checker = judging.checker();
        Year year = year(plant, series);
        PartsWriter.Subject subject =
                new PartsWriter.Subject(PlainText.of(file), PlainText.of(prices.toString()), list, year.told());
        PrintWriter out = spec.commandLine().getOut();
        try (Interruptible hand = Interruptible.watched()) {
            PartsFront front =
                    searched(PartsSearch.of(checker.atAssumedValues(reading), list, year.flows()), list, hand, err);
            int code = written(front, subject, checker.rulebook(), reading);
            out.flush();
            err.flush();
            return code;
        }
    }

    private void demand() {
        if (format != Format.TEXT && format != Format.JSON && format != Format.HTML) {
            throw new ParameterException(spec.commandLine(), spec.name() + " writes text, json or html");
        }
        flows.demand();
        if (warnings < 0 || (checks != null && checks < 0) || (seconds != null && seconds < 1)) {
            throw new ParameterException(
                    spec.commandLine(), "--warnings and --checks are 0 or more, --stop-after is 1 or more seconds");
        }
        if (threads != null && (threads < 1 || threads > 256)) {
            throw new ParameterException(spec.commandLine(), "--threads is from 1 to 256");
        }
        if (mend && (number != null || warnings < Integer.MAX_VALUE || format == Format.HTML)) {
            throw new ParameterException(
                    spec.commandLine(), "--mend finds one change, told as text or json: no --set, no --warnings");
        }
        if (write != null && number == null && !mend) {
            throw new ParameterException(spec.commandLine(), "--write needs --set: which of the sets found is written");
        }
        Path target = write;
        if (target != null && Files.exists(target)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--write makes a new file; " + PlainText.of(target.toString()) + " is there already");
        }
    }

    private record Year(FlowClasses flows, String told) {}

    private static Year year(Plant plant, @Nullable FlowSeries series) {
        Optional<FlowClasses> stated = FlowClasses.stated(plant.numbers().site());
        FlowClasses flows = series != null
                ? FlowClasses.of(series, plant.numbers().site().keptInStream())
                : stated.orElseGet(FlowClasses::alwaysFull);
        String of = flows.count() == 1 ? "1 flow" : flows.count() + " flows";
        return new Year(
                flows,
                series != null
                        ? "over the mean year of " + series.days() + " daily flows, told by " + of
                        : stated.isPresent()
                                ? "over a year of the stream that the design states, told by " + of
                                : "over a year with the pipe always full: the design states no stream");
    }

    private PartsFront searched(PartsSearch search, PriceList list, Interruptible hand, PrintWriter err) {
        boolean shown = Terminals.forErrorsOnly() || Terminals.forDialogue();
        long begun = System.nanoTime();
        Predicate<PartsSearch.Progress> goOn = progress -> {
            if (shown) {
                err.print("\rleat: " + progress.solved() + " of " + progress.sets() + " sets solved, "
                        + progress.checked() + " judged, " + progress.points() + " found ");
                err.flush();
            }
            return !hand.asked() && (seconds == null || System.nanoTime() - begun < seconds * 1_000_000_000L);
        };
        long most = checks != null ? checks : Math.max(LEAST_CHECKS, list.sets() / ONE_IN);
        int atOnce = threads != null ? threads : Runtime.getRuntime().availableProcessors();
        PartsSearch.Extent extent = new PartsSearch.Extent(atOnce, warnings, most, goOn);
        PartsFront front = mend ? search.mend(extent) : search.front(extent);
        if (shown) {
            err.print("\r" + " ".repeat(79) + "\r");
            err.flush();
        }
        return front;
    }

    private int written(PartsFront front, PartsWriter.Subject subject, Rulebook rulebook, Reading reading)
            throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Integer no = mend && !front.points().isEmpty() ? Integer.valueOf(1) : number;
        if (no != null && (no < 1 || no > front.points().size())) {
            err.print("leat: there is no set " + no + ": " + front.points().size() + " found\n");
            return ExitCode.CALL_WRONG;
        }
        if (no != null && write != null) {
            PartsFront.Point point = front.points().get(no - 1);
            Optional<String> text = FileChange.written(
                    reading, point.edits(), changed -> DesignReader.read(changed, reading.source(), parts()));
            if (text.isEmpty()) {
                err.print("leat: the parts cannot be written into a copy of " + PlainText.of(file)
                        + ": a field that they set stands in another file\n");
                return ExitCode.NOT_JUDGED;
            }
            Path target = Objects.requireNonNull(write);
            try {
                NewFiles.write(Map.of(target, text.get()));
            } catch (FileAlreadyExistsException e) {
                err.print("leat: --write makes a new file; " + PlainText.of(target.toString()) + " is there already\n");
                return ExitCode.CALL_WRONG;
            } catch (Outputs.CannotWriteException e) {
                err.print("leat: " + PlainText.of(String.valueOf(e.getMessage())) + "\n");
                return ExitCode.NOT_JUDGED;
            }
        }
        PartsWriter writer = new PartsWriter(rulebook, subject);
        if (format == Format.HTML) {
            String name = Objects.requireNonNull(reading.design()).name();
            out.append(new PartsPage(rulebook, subject).written(front, name == null ? file : name));
        } else if (format == Format.JSON) {
            writer.json(front, out);
        } else if (mend) {
            writer.mended(front, out);
        } else if (no != null) {
            writer.text(front, no, out);
        } else {
            writer.text(front, out);
        }
        return front.points().isEmpty() ? ExitCode.FOUND : ExitCode.NOTHING;
    }

    private PartsFinder parts() {
        Path folder = Path.of(file).getParent();
        return PartsFinder.within(folder == null ? Path.of("") : folder);
    }
}
