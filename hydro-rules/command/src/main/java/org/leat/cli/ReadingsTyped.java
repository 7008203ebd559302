package org.leat.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.design.Gauging;
import org.leat.file.Filled;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.file.RecordReader;
import picocli.CommandLine.IModelTransformer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.ISetter;
import picocli.CommandLine.Model.OptionSpec;

/** Readings given in options: one table says which option is which field of which method; the reader of files judges them. */
final class ReadingsTyped {

    /** How the words of an option are the words of a file. */
    private enum Form {
        ONE,
        LIST,
        /** {@code DISTANCE@ANGLE}, an option for each. */
        LEGS
    }

    /** One option: a field of a method. */
    private record Field(String option, String label, String key, Form form, String about) {}

    /** One method; its first field begins it. */
    private record Method(String part, String kind, List<Field> fields) {
        String first() {
            return fields.get(0).option();
        }

        boolean takes(String option) {
            return fields.stream().anyMatch(f -> f.option().equals(option));
        }
    }

    private static final Field TIMES =
            new Field("--times", "TIME,…", "times", Form.LIST, "Of bucket or float, one a reading.");
    private static final Field WEIR_HEAD = one("--weir-head", "LENGTH", "head", "Water above the crest, upstream.");
    private static final Field CREST_HEIGHT = one("--crest-height", "LENGTH", "crest-height", "Crest above the bed.");
    private static final Field CHANNEL_WIDTH =
            one("--channel-width", "LENGTH", "channel-width", "Of the approach to the weir.");

    private static final List<Method> METHODS = List.of(
            method(
                    "flow",
                    "bucket",
                    one("--bucket", "VOLUME", "volume", "What the bucket holds; with --times."),
                    TIMES),
            method(
                    "flow",
                    "floats",
                    one("--float", "LENGTH", "length", "The float's way; with --wet-area and --times."),
                    one("--wet-area", "AREA", "area", "Mean cross-section of the float's reach."),
                    TIMES,
                    one("--surface-factor", "RATIO", "surface-factor", "Mean over surface velocity of the float.")),
            method(
                    "flow",
                    "v-notch-weir",
                    one(
                            "--v-notch",
                            "ANGLE",
                            "angle",
                            "Of a V-notch weir; with --weir-head, --crest-height, --channel-width."),
                    WEIR_HEAD,
                    CREST_HEIGHT,
                    CHANNEL_WIDTH),
            method(
                    "flow",
                    "rectangular-weir",
                    one(
                            "--weir-width",
                            "LENGTH",
                            "width",
                            "Of a rectangular weir; with --weir-head, --crest-height, --channel-width."),
                    WEIR_HEAD,
                    CREST_HEIGHT,
                    CHANNEL_WIDTH),
            method(
                    "head",
                    "tube",
                    new Field("--tube", "STEP,…", "steps", Form.LIST, "Falls read on a water-filled tube."),
                    one("--step-reading", "LENGTH", "reading", "How well one step of the tube is read.")),
            method(
                    "head",
                    "gauge",
                    one("--gauge", "PRESSURE", "pressure", "Read on the filled, shut pipe."),
                    one("--gauge-above", "LENGTH", "gauge-above-nozzle", "Height of the gauge above the nozzle.")),
            method(
                    "head",
                    "clinometer",
                    new Field(
                            "--leg",
                            "DISTANCE@ANGLE",
                            "legs",
                            Form.LEGS,
                            "One sight with clinometer and tape, as 20 m@12°; give it once for each leg."),
                    one("--angle-reading", "ANGLE", "angle-reading", "How well one angle is read.")));

    private static Field one(String option, String label, String key, String about) {
        return new Field(option, label, key, Form.ONE, about);
    }

    private static Method method(String part, String kind, Field... fields) {
        return new Method(part, kind, List.of(fields));
    }

    /** What was given, by option. */
    private final Map<String, Object> given = new LinkedHashMap<>();

    /** Makes the options of the table, once each. */
    static final class Options implements IModelTransformer {
        @Override
        public CommandSpec transform(CommandSpec command) {
            ReadingsTyped typed = ((GaugeCommand) command.userObject()).typed();
            Map<String, Field> once = new LinkedHashMap<>();
            METHODS.forEach(method -> method.fields().forEach(f -> once.putIfAbsent(f.option(), f)));
            once.values().forEach(field -> command.addOption(typed.option(field)));
            return command;
        }
    }

    private OptionSpec option(Field field) {
        OptionSpec.Builder option = OptionSpec.builder(field.option())
                .paramLabel(field.label())
                .description(field.about())
                .setter(new ISetter() {
                    @Override
                    public <T> @Nullable T set(@Nullable T value) {
                        if (value != null) {
                            given.put(field.option(), value);
                        }
                        return null;
                    }
                });
        return field.form() == Form.LEGS
                ? option.type(List.class).auxiliaryTypes(String.class).build()
                : option.type(String.class).build();
    }

    /** {@return whether any option was given} */
    boolean any() {
        return !given.isEmpty();
    }

    /** {@return what is wrong with the options among themselves; null if nothing is} */
    @Nullable
    String fault() {
        for (String option : given.keySet()) {
            List<Method> of = METHODS.stream().filter(m -> m.takes(option)).toList();
            long begun = of.stream().filter(this::begun).count();
            if (begun != 1) {
                List<String> first = of.stream().map(Method::first).toList();
                return option + " goes with " + String.join(" or ", first)
                        + (begun == 0 ? "" : ", one in a call; both can stand in a file");
            }
        }
        return null;
    }

    private boolean begun(Method method) {
        return given.containsKey(method.first());
    }

    /** {@return the readings, as if they stood in a file} */
    Filled<Gauging> read() {
        Map<String, List<Object>> parts = new LinkedHashMap<>();
        for (Method method : METHODS) {
            if (begun(method)) {
                parts.computeIfAbsent(method.part(), p -> new ArrayList<>()).add(content(method));
            }
        }
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("format", 1);
        file.putAll(parts);
        return RecordReader.read(Gauging.class, file, "options");
    }

    private Map<String, Object> content(Method method) {
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("kind", method.kind());
        for (Field field : method.fields()) {
            Object value = given.get(field.option());
            if (value != null) {
                content.put(
                        field.key(),
                        switch (field.form()) {
                            case ONE -> value.toString().strip();
                            case LIST -> items(value.toString());
                            case LEGS ->
                                ((List<?>) value)
                                        .stream()
                                                .flatMap(legs -> items(legs.toString()).stream())
                                                .map(ReadingsTyped::leg)
                                                .toList();
                        });
            }
        }
        return content;
    }

    private static List<String> items(String words) {
        return List.of(words.split(",", -1)).stream().map(String::strip).toList();
    }

    private static Map<String, Object> leg(String words) {
        int at = words.indexOf('@');
        return at < 0
                ? Map.of("distance", words)
                : Map.of(
                        "distance",
                        words.substring(0, at).strip(),
                        "angle",
                        words.substring(at + 1).strip());
    }

    /** {@return a problem in the words of the option it came from} */
    String word(Problem problem) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        String named = "";
        for (Method method : METHODS) {
            if (begun(method)) {
                int i = counted.merge(method.part(), 1, Integer::sum) - 1;
                for (Field field : method.fields()) {
                    String path = "/" + method.part() + "[" + i + "]/" + field.key();
                    if (problem.path().equals(path) || problem.path().startsWith(path + "[")) {
                        named = field.option() + ": ";
                    }
                }
            }
        }
        return named.isEmpty() ? ProblemText.of(problem) : named + ProblemText.sentence(problem);
    }
}
