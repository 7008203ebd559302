package org.leat.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.GrossHead;
import org.leat.design.OpenCircuit;
import org.leat.design.VoltageAs;
import org.leat.design.VoltageBetween;
import org.leat.file.DesignEdit;
import org.leat.file.Reading;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;
import org.leat.readings.LoadState;
import org.leat.readings.Observation;
import org.leat.readings.PlantReadings;
import org.leat.readings.ReadingKind;
import org.leat.readings.TakenReadings;

/**
 * What a design learns from readings at the water: measured constants in place of what was stated, with the day, comments and layout
 * kept. What the design knows better than the reading tells stays. The head from the standing pressure, the machine's volts from speed and volts with open leads.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Learned {

    private static final MathContext DIGITS = new MathContext(4);

    private Learned() {}

    /**
     * One value.
     *
     * @param path in the design
     * @param line where it stands, from one
     * @param before the line as it is
     * @param after the line as it will be
     * @param from what it was measured by
     */
    public record Value(String path, int line, String before, String after, String from) {}

    /**
     * What was learned.
     *
     * @param values each with its line
     * @param text of the design file with them
     */
    public record Lesson(List<Value> values, String text) {
        public Lesson {
            values = List.copyOf(values);
        }
    }

    private record Found(String path, Measured<?> value, String from) {}

    /** {@return what a design learns from the readings; no values where they hold nothing that it states} */
    public static Lesson of(Reading design, PlantNumbers numbers, PlantReadings readings, TakenReadings taken) {
        Design built = design.design();
        List<Found> found = new ArrayList<>();
        if (built != null) {
            head(built, numbers, taken).ifPresent(found::add);
            volts(built, numbers, taken).ifPresent(found::add);
        }
        String day = readings.day() == null ? "" : ", " + readings.day();
        List<DesignEdit> edits = new ArrayList<>();
        List<Found> used = new ArrayList<>();
        for (Found one : found) {
            DesignEdit edit = DesignEdit.of(design, one.path(), one.value());
            if (edit != null) {
                edits.add(edit);
                used.add(one);
            }
        }
        String text = DesignEdit.apply(design.text(), edits);
        String[] before = design.text().split("\n", -1);
        String[] after = text.split("\n", -1);
        List<Value> values = new ArrayList<>();
        for (int i = 0; i < edits.size(); i++) {
            int line = edits.get(i).position().line();
            String said = "  # measured by " + used.get(i).from() + day;
            String bare = after[line - 1].replaceFirst("  # measured by .*$", "");
            boolean end = bare.endsWith("\r");
            String stripped = end ? bare.substring(0, bare.length() - 1) : bare;
            // a comment of the builder stays, and has no room for ours
            after[line - 1] = stripped.contains(" #") ? bare : stripped + said + (end ? "\r" : "");
            values.add(new Value(
                    used.get(i).path(),
                    line,
                    before[line - 1].strip(),
                    after[line - 1].strip(),
                    used.get(i).from()));
        }
        return new Lesson(values, String.join("\n", after));
    }

    private static Optional<Found> head(Design built, PlantNumbers numbers, TakenReadings taken) {
        Observation standing = reading(taken, LoadState.SHUT, ReadingKind.STANDING_PRESSURE, null);
        if (standing == null || !(built.site().grossHead() instanceof GrossHead.Stated stated)) {
            return Optional.empty();
        }
        double weight = numbers.water().specificWeight();
        if (knownBetter(stated.head(), 2 * standing.standard() / weight)) {
            return Optional.empty();
        }
        Measured<Length> head =
                measured(standing.value() / weight, 2 * standing.standard() / weight, "m", Length.class);
        return Optional.of(new Found("/site/gross-head", head, "standing pressure"));
    }

    private static Optional<Found> volts(Design built, PlantNumbers numbers, TakenReadings taken) {
        Observation volts = reading(taken, LoadState.OPEN, ReadingKind.LEAD_VOLTS, null);
        Observation speed = volts == null
                ? null
                : reading(
                        taken,
                        LoadState.OPEN,
                        ReadingKind.SPEED,
                        volts.channel().nozzles());
        if (volts == null
                || speed == null
                || speed.value() <= 0
                || !(built.alternator().openCircuit() instanceof OpenCircuit.VoltsAtSpeed stated)
                || stated.between() == VoltageBetween.BRIDGE_OUTPUT
                || stated.as() == VoltageAs.DIRECT) {
            return Optional.empty();
        }
        double form = (stated.as() == VoltageAs.PEAK ? Math.sqrt(2) : 1)
                / (stated.between() == VoltageBetween.LEAD_AND_STAR_POINT ? Math.sqrt(3) : 1);
        double ratio =
                Si.of(stated.speed()) / (speed.value() * numbers.alternator().gearRatio());
        double value = volts.value() * ratio * form;
        double share = Math.hypot(volts.standard() / volts.value(), speed.standard() / speed.value());
        if (knownBetter(stated.voltage(), 2 * share * Si.of(stated.voltage().value()))) {
            return Optional.empty();
        }
        Measured<ElectricPotential> measured = measured(value, 2 * share * value, "V", ElectricPotential.class);
        return Optional.of(new Found("/alternator/open-circuit/voltage", measured, "open leads at the water"));
    }

    /** A value stated with a smaller tolerance than this measurement's stays. */
    private static boolean knownBetter(Measured<?> stated, double half) {
        return stated.plusMinusSi() > 0 && stated.plusMinusSi() < half;
    }

    private static <Q extends Quantity<Q>> Measured<Q> measured(double value, double half, String unit, Class<Q> kind) {
        double rounded = new BigDecimal(value).round(DIGITS).doubleValue();
        double plusMinus = new BigDecimal(half).round(new MathContext(2)).doubleValue();
        return new Measured<>(Si.quantity(rounded, unit, kind), Si.quantity(plusMinus, unit, kind));
    }

    private static @Nullable Observation reading(
            TakenReadings taken, LoadState state, ReadingKind what, @Nullable String nozzles) {
        for (Observation seen : taken.readings()) {
            if (seen.channel().state() == state
                    && seen.channel().what() == what
                    && (nozzles == null || nozzles.equals(seen.channel().nozzles()))) {
                return seen;
            }
        }
        return null;
    }
}
