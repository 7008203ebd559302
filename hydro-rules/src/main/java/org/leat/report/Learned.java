package org.leat.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Alternator;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.file.DesignEdit;
import org.leat.file.Position;
import org.leat.file.Reading;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;
import org.leat.readings.BenchReadings;
import org.leat.readings.Expectations;
import org.leat.readings.MotorBench;
import org.leat.readings.PlantReadings;
import org.leat.readings.TakenReadings;

/**
 * What a design learns from readings, at the water or on the bench: measured constants in place of what was stated or assumed, with
 * the day, comments and layout kept. What the design knows better than the reading tells stays, and is told.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Learned {

    private static final MathContext DIGITS = new MathContext(4);

    private Learned() {}

    /**
     * One value.
     *
     * @param path in the design
     * @param line where it stands, from one; of a line that is added, that before it
     * @param before the line as it is; "" where one is added
     * @param after the line as it will be
     * @param from what it was measured by
     */
    public record Value(String path, int line, String before, String after, String from) {}

    /**
     * A value that was measured and does not go into the file.
     *
     * @param path in the design
     * @param at where it would stand
     * @param why it does not
     */
    public record Stays(String path, Position at, String why) {}

    /**
     * What was learned.
     *
     * @param values each with its line
     * @param stays what was measured and is left as it is
     * @param text of the design file with the values
     */
    public record Lesson(List<Value> values, List<Stays> stays, String text) {
        public Lesson {
            values = List.copyOf(values);
            stays = List.copyOf(stays);
        }
    }

    /** A value that goes into the design: a plain one, or a record of plain ones. */
    record Found(String path, Object value, String from) {}

    /**
     * {@return what a design learns from readings at the water; no values where they hold nothing that it states}
     *
     * @param expected of the plant of that design
     */
    public static Lesson of(Reading design, Expectations expected, PlantReadings readings, TakenReadings taken) {
        Design built = design.design();
        if (built == null) {
            return new Lesson(List.of(), List.of(), design.text());
        }
        WaterFound water = new WaterFound(design, built, expected, readings, taken);
        return written(design, water.found(), water.stays(), readings.day());
    }

    /** {@return what a design learns of its motor from a bench; nothing from readings that were wrong or of a motor that is broken} */
    public static Lesson of(Reading design, BenchReadings readings, MotorBench motor) {
        Alternator alternator = BenchFound.alternator(design);
        if (alternator == null) {
            return new Lesson(List.of(), List.of(), design.text());
        }
        BenchFound bench = new BenchFound(design, alternator, motor);
        return written(design, bench.found(), bench.stays(), readings.day());
    }

    /** {@return the lesson of values found, each put into the file with where it comes from} */
    static Lesson written(Reading design, List<Found> found, List<Stays> stayed, @Nullable LocalDate on) {
        String day = on == null ? "" : ", " + on;
        List<Stays> stays = new ArrayList<>(stayed);
        SortedMap<Integer, List<DesignEdit>> byLine = new TreeMap<>();
        Map<DesignEdit, Found> of = new LinkedHashMap<>();
        for (Found one : found) {
            DesignEdit edit = edit(design, one);
            if (edit == null) {
                stays.add(new Stays(
                        one.path(), design.positions().of(one.path()), "it cannot be put in there by program"));
            } else {
                of.put(edit, one);
                byLine.computeIfAbsent(edit.position().line(), l -> new ArrayList<>())
                        .add(edit);
            }
        }
        List<DesignEdit> edits = new ArrayList<>();
        List<Value> values = new ArrayList<>();
        byLine.forEach((line, here) -> {
            List<DesignEdit> replacing = new ArrayList<>();
            List<DesignEdit> adding = new ArrayList<>();
            for (DesignEdit edit : here) {
                (edit.text().contains("\n") ? adding : replacing).add(edit);
            }
            if (!replacing.isEmpty()) {
                String said = said(replacing, of) + day;
                String before = line(design.text(), line);
                List<DesignEdit> both = new ArrayList<>(replacing);
                comment(design, line, before, said).ifPresent(both::add);
                String after = line(DesignEdit.apply(design.text(), both), line);
                for (DesignEdit edit : replacing) {
                    Found one = Objects.requireNonNull(of.get(edit));
                    values.add(new Value(one.path(), line, before.strip(), after.strip(), one.from()));
                }
                edits.addAll(both);
            }
            for (DesignEdit edit : adding) {
                Found one = Objects.requireNonNull(of.get(edit));
                DesignEdit full = new DesignEdit(edit.position(), edit.text() + "  # measured by " + one.from() + day);
                edits.add(full);
                values.add(new Value(one.path(), line, "", full.text().strip(), one.from()));
            }
        });
        return new Lesson(values, stays, DesignEdit.apply(design.text(), edits));
    }

    static @Nullable DesignEdit edit(Reading design, Found found) {
        int cut = found.path().lastIndexOf('/');
        return design.positions().exactly(found.path()) == null
                ? DesignEdit.added(
                        design,
                        cut == 0 ? ElementPath.ROOT : found.path().substring(0, cut),
                        found.path().substring(cut + 1),
                        found.value())
                : DesignEdit.of(design, found.path(), found.value());
    }

    private static String said(List<DesignEdit> edits, Map<DesignEdit, Found> of) {
        return edits.stream()
                .map(edit -> Objects.requireNonNull(of.get(edit)).from())
                .distinct()
                .collect(Collectors.joining(" and "));
    }

    private static String line(String text, int number) {
        return text.split("\r\n|\r|\n", -1)[number - 1];
    }

    /** A comment of the builder stays, and has no room for ours; JSON has none at all. */
    private static Optional<DesignEdit> comment(Reading design, int line, String before, String said) {
        String text = "  # measured by " + said;
        Position end = DesignEdit.endOf(design.source(), design.text(), line);
        int ours = before.indexOf("  # measured by ");
        if (ours >= 0) {
            int from = before.codePointCount(0, ours) + 1;
            return Optional.of(new DesignEdit(new Position(end.file(), line, from, line, end.column()), text));
        }
        boolean json = design.text().stripLeading().startsWith("{");
        return json || before.contains(" #") ? Optional.empty() : Optional.of(new DesignEdit(end, text));
    }

    /** A value stated with a smaller tolerance than this measurement's stays. */
    static boolean knownBetter(Measured<?> stated, double half) {
        return stated.plusMinusSi() > 0 && stated.plusMinusSi() < half;
    }

    static <Q extends Quantity<Q>> Measured<Q> measured(double value, double half, String unit, Class<Q> kind) {
        double rounded = new BigDecimal(value).round(DIGITS).doubleValue();
        double plusMinus = new BigDecimal(half).round(new MathContext(2)).doubleValue();
        return new Measured<>(Si.quantity(rounded, unit, kind), Si.quantity(plusMinus, unit, kind));
    }
}
