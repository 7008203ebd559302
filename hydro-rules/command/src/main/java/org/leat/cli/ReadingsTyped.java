package org.leat.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Readings given in options; put into the words of a file of readings, so that one reader judges both. */
@Command
final class ReadingsTyped {

    private static final String TIMES = "--times";
    private static final String LEG = "--leg";

    @Option(names = "--bucket", paramLabel = "VOLUME", description = "What the bucket holds; with --times.")
    private @Nullable String bucket;

    @Option(names = "--float", paramLabel = "LENGTH", description = "The float's way; with --wet-area and --times.")
    private @Nullable String floats;

    @Option(names = TIMES, paramLabel = "TIME,…", description = "Of bucket or float, one a reading.")
    private @Nullable String times;

    @Option(names = "--wet-area", paramLabel = "AREA", description = "Mean cross-section of the float's reach.")
    private @Nullable String wetArea;

    @Option(names = "--surface-factor", paramLabel = "RATIO", description = "Mean over surface velocity of the float.")
    private @Nullable String surfaceFactor;

    @Option(
            names = "--v-notch",
            paramLabel = "ANGLE",
            description = "Of a V-notch weir; with --weir-head, --crest-height, --channel-width.")
    private @Nullable String notch;

    @Option(
            names = "--weir-width",
            paramLabel = "LENGTH",
            description = "Of a rectangular weir; with --weir-head, --crest-height, --channel-width.")
    private @Nullable String weirWidth;

    @Option(names = "--weir-head", paramLabel = "LENGTH", description = "Water above the crest, upstream.")
    private @Nullable String weirHead;

    @Option(names = "--crest-height", paramLabel = "LENGTH", description = "Crest above the bed.")
    private @Nullable String crestHeight;

    @Option(names = "--channel-width", paramLabel = "LENGTH", description = "Of the approach to the weir.")
    private @Nullable String channelWidth;

    @Option(names = "--tube", paramLabel = "STEP,…", description = "Falls read on a water-filled tube.")
    private @Nullable String tube;

    @Option(names = "--step-reading", paramLabel = "LENGTH", description = "How well one step of the tube is read.")
    private @Nullable String stepReading;

    @Option(names = "--gauge", paramLabel = "PRESSURE", description = "Read on the filled, shut pipe.")
    private @Nullable String gauge;

    @Option(names = "--gauge-above", paramLabel = "LENGTH", description = "Height of the gauge above the nozzle.")
    private @Nullable String gaugeAbove;

    @Option(
            names = LEG,
            paramLabel = "DISTANCE@ANGLE",
            description = "One sight with clinometer and tape, as 20 m@12°; give it once for each leg.")
    private List<String> legs = new ArrayList<>();

    @Option(names = "--angle-reading", paramLabel = "ANGLE", description = "How well one angle is read.")
    private @Nullable String angleReading;

    /** One value of a method. */
    private record Field(
            String option, String key, @Nullable String value, boolean list) {}

    /** One method: its first field begins it. */
    private record Way(String part, String kind, List<Field> fields) {
        boolean begun() {
            return fields.get(0).value() != null;
        }
    }

    private List<Way> ways() {
        return List.of(
                new Way(
                        "flow",
                        "bucket",
                        List.of(one("--bucket", "volume", bucket), new Field(TIMES, "times", times, true))),
                new Way(
                        "flow",
                        "floats",
                        List.of(
                                one("--float", "length", floats),
                                one("--wet-area", "area", wetArea),
                                new Field(TIMES, "times", times, true),
                                one("--surface-factor", "surface-factor", surfaceFactor))),
                new Way("flow", "v-notch-weir", weir(one("--v-notch", "angle", notch))),
                new Way("flow", "rectangular-weir", weir(one("--weir-width", "width", weirWidth))),
                new Way(
                        "head",
                        "tube",
                        List.of(
                                new Field("--tube", "steps", tube, true),
                                one("--step-reading", "reading", stepReading))),
                new Way(
                        "head",
                        "gauge",
                        List.of(
                                one("--gauge", "pressure", gauge),
                                one("--gauge-above", "gauge-above-nozzle", gaugeAbove))),
                new Way(
                        "head",
                        "clinometer",
                        List.of(
                                new Field(LEG, "legs", legs.isEmpty() ? null : String.join(",", legs), true),
                                one("--angle-reading", "angle-reading", angleReading))));
    }

    private List<Field> weir(Field first) {
        return List.of(
                first,
                one("--weir-head", "head", weirHead),
                one("--crest-height", "crest-height", crestHeight),
                one("--channel-width", "channel-width", channelWidth));
    }

    private static Field one(String option, String key, @Nullable String value) {
        return new Field(option, key, value, false);
    }

    /** {@return the options that were given} */
    List<String> given() {
        return ways().stream()
                .flatMap(way -> way.fields().stream())
                .filter(field -> field.value() != null)
                .map(Field::option)
                .distinct()
                .toList();
    }

    /** {@return what is wrong with the options among themselves; null if nothing is} */
    @Nullable
    String fault() {
        for (String option : given()) {
            List<Way> of = ways().stream()
                    .filter(way ->
                            way.fields().stream().anyMatch(f -> f.option().equals(option)))
                    .toList();
            long begun = of.stream().filter(Way::begun).count();
            if (begun != 1) {
                List<String> first =
                        of.stream().map(way -> way.fields().get(0).option()).toList();
                return option + " goes with " + String.join(" or ", first)
                        + (begun == 0 ? "" : ", one in a call; both can stand in a file");
            }
        }
        return null;
    }

    /** {@return the readings as a file of readings} */
    String json() {
        Map<String, List<String>> parts = new LinkedHashMap<>();
        for (Way way : ways()) {
            if (way.begun()) {
                StringBuilder text = new StringBuilder("{\"kind\": " + quoted(way.kind()));
                for (Field field : way.fields()) {
                    if (field.value() != null) {
                        text.append(", ")
                                .append(quoted(field.key()))
                                .append(": ")
                                .append(value(field));
                    }
                }
                parts.computeIfAbsent(way.part(), p -> new ArrayList<>()).add(text + "}");
            }
        }
        StringBuilder all = new StringBuilder("{\"format\": 1");
        parts.forEach((part, ways) -> all.append(", " + quoted(part) + ": [" + String.join(", ", ways) + "]"));
        return all + "}";
    }

    private static String value(Field field) {
        String given = String.valueOf(field.value());
        if (!field.list()) {
            return quoted(given);
        }
        List<String> items = new ArrayList<>();
        for (String item : given.split(",", -1)) {
            int at = item.indexOf('@');
            items.add(
                    !field.option().equals(LEG)
                            ? quoted(item)
                            : at < 0
                                    ? "{\"distance\": " + quoted(item) + "}"
                                    : "{\"distance\": " + quoted(item.substring(0, at)) + ", \"angle\": "
                                            + quoted(item.substring(at + 1)) + "}");
        }
        return "[" + String.join(", ", items) + "]";
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (char c : text.strip().toCharArray()) {
            if (c == '"' || c == '\\') {
                out.append('\\');
            }
            out.append(c);
        }
        return out.append('"').toString();
    }

    /** {@return a problem in the words of the option it came from} */
    String word(Problem problem) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        String named = "";
        for (Way way : ways()) {
            if (way.begun()) {
                int i = counted.merge(way.part(), 1, Integer::sum) - 1;
                for (Field field : way.fields()) {
                    String path = "/" + way.part() + "[" + i + "]/" + field.key();
                    String rest =
                            problem.path().startsWith(path) ? problem.path().substring(path.length()) : "-";
                    if (rest.isEmpty() || rest.startsWith("[")) {
                        named = field.option();
                    }
                }
            }
        }
        String said = ProblemText.of(problem);
        String path = problem.path() + ": ";
        return named.isEmpty() || !said.startsWith(path) ? said : named + ": " + said.substring(path.length());
    }
}
