package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.leat.file.Reading;
import org.leat.quantity.QuantityKind;
import org.leat.report.PlainText;
import org.leat.report.UsualUnits;
import org.leat.report.Wrapping;
import org.leat.route.Route;
import org.leat.route.Track;
import org.leat.route.TrackReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leat route DESIGN TRACK}. */
@Command(
        name = "route",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Lays a section of a design's pipe along a track that was walked (GPX).",
            "It becomes as many sections as the ground has slopes. The shape is the track's, the head stays the design's. Nothing is written without --write."
        })
final class RouteCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "DESIGN", description = "The design file.")
    private Path design = Path.of("");

    @Parameters(index = "1", paramLabel = "TRACK", description = "A track along the pipe, GPX.")
    private Path track = Path.of("");

    @Option(
            names = "--section",
            paramLabel = "NAME",
            description = "The section of the penstock that follows the track; the longest if not said.")
    private @Nullable String section;

    @Option(
            names = "--noise",
            paramLabel = "METRES",
            defaultValue = "1.5",
            description =
                    "Noise of the track's heights: what lies no farther from a straight line is none of the shape;"
                            + " 1.5 if not said.")
    private double noise = 1.5;

    @Option(names = "--write", description = "Writes the sections into the design file; comments and layout stay.")
    private boolean write;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (!(noise >= 0 && noise <= 100)) {
            throw new ParameterException(spec.commandLine(), "--noise is from 0 to 100 metres");
        }
        PrintWriter err = spec.commandLine().getErr();
        byte[] content = Files.isRegularFile(design) ? Files.readAllBytes(design) : new byte[0];
        Reading reading = PlantFile.read(design.toString());
        PlantFile.tell(reading.problems(), err);
        TrackReader.Read read = TrackReader.read(track, track.toString());
        if (read.fault() != null) {
            err.print(PlainText.of(read.fault()) + "\n");
        }
        Track walked = read.track();
        if (reading.design() == null || walked == null) {
            return ExitCode.UNREADABLE;
        }
        if (!(Route.of(reading, walked, section, noise) instanceof Route.Done done)) {
            err.print("leat: " + PlainText.of(((Route.Impossible) Route.of(reading, walked, section, noise)).why())
                    + "\n");
            return ExitCode.CALL_WRONG;
        }
        Route route = done.route();
        String text = write ? route.written() : null;
        tell(route, walked);
        if (text != null) {
            InPlace.write(design, content, text);
        }
        return write && text == null ? ExitCode.NOT_JUDGED : ExitCode.NOTHING;
    }

    private void tell(Route route, Track walked) {
        PrintWriter out = spec.commandLine().getOut();
        double from = route.stretches().get(0).from();
        double to = route.stretches().get(route.stretches().size() - 1).to();
        int slopes = route.stretches().size();
        String name = PlainText.of(route.section().name());
        List<String> lines = new ArrayList<>();
        lines.add(PlainText.of(track.toString()) + ": " + walked.points() + " points, " + metres(walked.length())
                + " on the map" + (walked.turned() ? ", walked upwards" : "")
                + (walked.filled() == 0 ? "" : ", " + walked.filled() + " without a height, taken straight") + ".");
        lines.add("By its own heights it falls " + metres(walked.fall()) + "; section " + name + " keeps the "
                + metres(from - to) + " of the design, and the head with them.");
        lines.add("With " + metres(noise) + " of noise " + (slopes == 1 ? "one slope is" : slopes + " slopes are")
                + " left; the pipe is " + metres(route.length()) + " long.");
        lines.add("");
        route.sections().lines().map(PlainText::of).forEach(lines::add);
        lines.add("");
        lines.forEach(line -> out.print(Wrapping.text(line + "\n", Terminals.width())));
        out.print(
                !write
                        ? "Nothing is written yet: --write puts them into the design, each with the section's pipe.\n"
                        : route.written() == null
                                ? "Not written: the section does not stand one field a line in this file; write them by hand.\n"
                                : "Written into " + PlainText.of(design.toString()) + ".\n");
    }

    private static String metres(double value) {
        return UsualUnits.show(value, QuantityKind.LENGTH, "m", 3);
    }
}
