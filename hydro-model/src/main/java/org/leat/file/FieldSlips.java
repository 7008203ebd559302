package org.leat.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.leat.design.BatteryBank;
import org.leat.design.Pipe;

/** Names that people give to fields, and the fields they mean. They are told, never taken. */
final class FieldSlips {

    private static final Map<String, List<String>> MEANT = meant();

    /** Names of something else than the field beside which they stand: no value of theirs is checked as that field's. */
    private static final Set<String> OTHER = Set.of(
            "voltage",
            "nominalvoltage",
            "systemvoltage",
            "poles",
            "magnets",
            "insidediameter",
            "innerdiameter",
            "id",
            "internaldiameter",
            "diameter",
            "size",
            "watts",
            "energy",
            "radius",
            "outsidediameter",
            "outerdiameter",
            "externaldiameter",
            "od");

    private static final Set<String> INSIDE =
            Set.of("insidediameter", "innerdiameter", "internaldiameter", "id", "bore", "internalbore");
    private static final Set<String> OUTSIDE =
            Set.of("outsidediameter", "outerdiameter", "externaldiameter", "od", "dn");

    private static final int DEPTH = 2;

    private FieldSlips() {}

    private static Map<String, List<String>> meant() {
        Map<String, List<String>> all = new HashMap<>();
        put(all, "bore", "insidediameter", "innerdiameter", "internaldiameter", "id", "internalbore");
        put(all, "outside-diameter bore pitch-diameter shaft-diameter", "diameter", "size", "dia");
        put(all, "outside-diameter", "od", "outerdiameter", "externaldiameter", "dn");
        put(all, "gross-head", "head", "fall", "drop", "statichead");
        put(all, "cells-in-series", "voltage", "nominalvoltage", "systemvoltage", "cells", "series");
        put(all, "capacity", "ah", "amphours", "amperehours", "size");
        put(all, "chemistry", "type", "batterytype");
        put(all, "kind", "type", "sort");
        put(all, "runner", "turbine", "wheel", "turbinewheel", "impeller");
        put(all, "alternator", "generator", "motor", "pma", "dynamo");
        put(all, "penstock", "pipe", "pipeline", "hose", "pipes");
        put(all, "nozzles", "jets", "jet", "nozzle");
        put(all, "regulator", "controller", "chargecontroller", "mppt", "chargeregulator");
        put(all, "dump-load", "dump", "diversionload", "ballast", "heater", "ballastload");
        put(all, "battery", "batteries", "accumulator", "bank", "batterybank");
        put(all, "protection", "fuses", "breakers", "fuse");
        put(all, "cables", "wires", "wiring", "cable", "wire");
        put(all, "rectifier", "bridge", "diodes", "bridgerectifier");
        put(all, "pole-pairs", "poles", "magnets", "polepair");
        put(all, "pitch-diameter", "pcd", "wheeldiameter", "runnerdiameter", "pitchcirclediameter");
        put(all, "open-circuit", "kv", "voltageconstant", "emf", "backemf");
        put(all, "hours-per-day", "hours", "time", "runtime", "use");
        put(all, "power", "watts", "wattage", "load");
        put(all, "count", "qty", "quantity", "number", "pieces");
        put(all, "area", "crosssection", "csa", "awg", "gauge", "section");
        put(all, "pressure-rating", "pn", "rating", "ratedpressure", "workingpressure");
        put(all, "wall", "wallthickness", "thickness");
        put(all, "material", "grade", "metal");
        put(all, "submergence", "depth", "waterdepth", "depthofwater");
        put(all, "sections", "section", "runs", "lengths");
        put(all, "fittings", "bends", "valves", "fitting");
        put(all, "input-voltage-limit", "maxvoltage", "maximumvoltage", "vmax", "maxpvvoltage", "maxinputvoltage");
        put(all, "average-current", "currentrating", "current", "ratedcurrent", "maxcurrent", "amps");
        put(all, "repetitive-peak-reverse-voltage", "voltage", "reversevoltage", "vrrm", "piv", "ratedvoltage");
        put(all, "rated-current", "rating", "amps", "amperes", "current");
        put(all, "current-rating", "maxcurrent", "ratedcurrent", "maximumcurrent");
        put(all, "continuous-power", "power", "ratedpower");
        put(all, "absorption-voltage", "bulkvoltage", "boostvoltage");
        put(all, "available", "onhand", "spares", "stock");
        put(all, "open", "inuse", "fitted", "installed", "bores", "sizes");
        put(all, "altitude", "elevation", "heightabovesea");
        put(all, "resistance-between-leads", "resistance", "windingresistance", "phaseresistance");
        put(all, "inductance-between-leads", "inductance", "windinginductance");
        put(all, "connection", "winding", "wiring");
        put(all, "stream", "flow", "water", "river", "creek");
        put(all, "power-rating", "watts", "rating", "power");
        put(all, "buckets", "cups", "blades", "spoons");
        put(all, "length", "distance", "run");
        put(all, "day", "date", "timestamp", "datetime", "when", "dateandtime");
        return Map.copyOf(all);
    }

    private static void put(Map<String, List<String>> all, String fields, String... names) {
        for (String name : names) {
            all.merge(name, List.of(fields.split(" ", -1)), (a, b) -> {
                List<String> both = new ArrayList<>(a);
                both.addAll(b);
                return List.copyOf(both);
            });
        }
    }

    /** {@return the known field that people call by that name; empty where none or several are} */
    static String meant(String key, Collection<String> known) {
        List<String> fields = MEANT.getOrDefault(bare(key), List.of()).stream()
                .filter(known::contains)
                .distinct()
                .toList();
        return fields.isEmpty() ? "" : fields.get(0);
    }

    /**
     * {@return where a name belongs that stands one or two steps too far out} It may be the very name, or one that people give to
     * a field there. Empty where no part has it or several have.
     */
    static String within(Shape shape, String key) {
        List<String> exact = deeper(shape, field -> field.key().equals(key), DEPTH);
        List<String> found = exact.isEmpty()
                ? deeper(
                        shape,
                        field -> MEANT.getOrDefault(bare(key), List.of()).stream()
                                .limit(1)
                                .anyMatch(field.key()::equals),
                        DEPTH)
                : exact;
        return found.size() == 1 ? found.get(0) : "";
    }

    private static List<String> deeper(Shape shape, Predicate<Shape.Field> wanted, int depth) {
        List<String> found = new ArrayList<>();
        for (Shape.Field field : shape.fields()) {
            boolean list = field.type() instanceof ValueType.OfList;
            ValueType item = field.type() instanceof ValueType.OfList of ? of.item() : field.type();
            if (depth == 0 || !(item instanceof ValueType.OfRecord record)) {
                continue;
            }
            Shape inner = Shape.of(record.type());
            String into = list ? "each item of " + field.key() : field.key();
            inner.fields().stream()
                    .filter(wanted)
                    .map(f -> f.key() + " in " + into + ": " + f.type().label())
                    .forEach(found::add);
        }
        if (found.isEmpty() && depth > 1) {
            for (Shape.Field field : shape.fields()) {
                ValueType item = field.type() instanceof ValueType.OfList of ? of.item() : field.type();
                if (item instanceof ValueType.OfRecord record) {
                    deeper(Shape.of(record.type()), wanted, depth - 1)
                            .forEach(where -> found.add(where.replaceFirst(": ", " of " + field.key() + ": ")));
                }
            }
        }
        return found;
    }

    /** {@return whether what stands under a name is no value of the field that is meant} The same in other signs is. */
    static boolean other(String key, String meant) {
        return OTHER.contains(bare(key)) && !bare(key).equals(bare(meant));
    }

    /** A pipe by its other diameter: never taken for the one it is stated by. */
    private static String otherDiameter(Class<?> record, String bare) {
        if (!Pipe.class.isAssignableFrom(record)) {
            return "";
        }
        boolean byBore = record == Pipe.Hose.class || record == Pipe.OtherPipe.class;
        if (byBore) {
            return OUTSIDE.contains(bare)
                    ? "bore: the inside diameter, that is the outside one less twice the wall"
                    : "";
        }
        return INSIDE.contains(bare) ? "outside-diameter: as marked, that is the inside one and twice the wall" : "";
    }

    /** {@return what to write in place of a field that has another way of being told; empty for most} */
    static String cure(Class<?> record, String key, @Nullable Node value) {
        String bare = bare(key);
        String text = value instanceof Node.Scalar scalar ? scalar.text().strip() : "";
        if (record == BatteryBank.class && bare.endsWith("voltage")) {
            return switch (text.replaceFirst("(?i) ?v(olts?)?$", "")) {
                case "12" -> "cells-in-series: 4 of lithium-iron-phosphate, or cells-in-series: 6 of lead";
                case "24" -> "cells-in-series: 8 of lithium-iron-phosphate, or cells-in-series: 12 of lead";
                case "48" -> "cells-in-series: 16 of lithium-iron-phosphate, or cells-in-series: 24 of lead";
                default -> "cells-in-series: as many as stand between the poles";
            };
        }
        if (bare.equals("poles") || bare.equals("magnets")) {
            return text.matches("\\d{1,3}") && Integer.parseInt(text) % 2 == 0
                    ? "pole-pairs: " + Integer.parseInt(text) / 2 + ", half the poles"
                    : "pole-pairs: half the poles";
        }
        return otherDiameter(record, bare);
    }

    /** {@return how many cells make a battery's usual voltage, as a problem prints it; empty for any other text} */
    static String cells(String text) {
        return switch (text.strip().replaceFirst("(?i) ?v(olts?)?$", "v")) {
            case "12v" -> "4\" (lithium-iron-phosphate) or \"6";
            case "24v" -> "8\" (lithium-iron-phosphate) or \"12";
            case "48v" -> "16\" (lithium-iron-phosphate) or \"24";
            default -> "";
        };
    }

    private static String bare(String key) {
        return key.length() > 40 ? key : key.toLowerCase(Locale.ROOT).replaceAll("[-_. ]", "");
    }
}
