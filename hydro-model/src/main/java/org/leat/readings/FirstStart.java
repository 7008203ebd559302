package org.leat.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.Plant;
import org.leat.plant.duties.HighestPressure;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.FirstStart.StartStep.Kind;
import org.leat.readings.FirstStart.StartStep.Line;

/** The steps of a careful first start of a plant, each with what is read, what is expected, and when to stop. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class FirstStart {

    /** Velocity in the pipe while it fills, m/s: the air must get out. AWWA M11 and M51, 1 ft/s (from memory). */
    private static final double FILLING = 0.3;

    /** On top of the highest pressure of any case, where surges are computed, Pa. EN 805, 11.3.2 (from memory). */
    private static final double TEST_ABOVE = 100_000;

    /** Surge allowed for where none is computed, at least, and what comes on top of it in the test, Pa. EN 805 (from memory). */
    private static final double SURGE_ALLOWED = 200_000;

    private static final double TEST_ABOVE_ALLOWED = 500_000;

    /** Duration of the main pressure test, s. EN 805, 11.3.3.4 (from memory): usually one hour. */
    private static final double TEST_TIME = 3600;

    /** Of a range, in standard uncertainties: 95 %. */
    private static final double COVERAGE = 2;

    private final Plant plant;
    private final PlantNumbers numbers;
    private final Expectations expected;
    private final List<StopLimit> limits;

    private FirstStart(Expectations expected, List<StopLimit> limits) {
        this.plant = expected.plant();
        this.numbers = plant.numbers();
        this.expected = expected;
        this.limits = limits;
    }

    /**
     * {@return the steps}
     *
     * @param limits when to stop, by the rules
     */
    public static List<StartStep> of(Expectations expected, List<StopLimit> limits) {
        return new FirstStart(expected, limits).steps();
    }

    private List<StartStep> steps() {
        List<NozzleGroup> sets = new ArrayList<>(expected.sets());
        sets.sort(Comparator.comparingDouble(NozzleGroup::area));
        NozzleGroup smallest = sets.get(0);
        List<StartStep> steps = new ArrayList<>();
        steps.add(new StartStep(Kind.FILL, "", fill()));
        Line test = pressureTest();
        if (test != null) {
            steps.add(new StartStep(
                    Kind.PRESSURE_TEST, "", List.of(test, exact("TEST_TIME", QuantityKind.TIME, TEST_TIME))));
        }
        steps.add(new StartStep(Kind.STANDING, "", read(Channel.standing())));
        steps.add(new StartStep(
                Kind.OPEN_LEADS,
                smallest.name(),
                read(
                        smallest,
                        LoadState.OPEN,
                        ReadingKind.RUNNING_PRESSURE,
                        ReadingKind.SPEED,
                        ReadingKind.LEAD_VOLTS,
                        ReadingKind.FREQUENCY)));
        if (ReadingModel.holdsWithoutBattery(numbers)) {
            steps.add(new StartStep(
                    Kind.DUMP_LOAD,
                    smallest.name(),
                    read(smallest, LoadState.DUMP, ReadingKind.SPEED, ReadingKind.BRIDGE_VOLTS)));
        }
        for (NozzleGroup set : sets) {
            steps.add(new StartStep(
                    set.equals(smallest) ? Kind.FIRST_ON_BUS : Kind.NEXT_ON_BUS,
                    set.name(),
                    read(
                            set,
                            LoadState.BUS,
                            ReadingKind.RUNNING_PRESSURE,
                            ReadingKind.FLOW,
                            ReadingKind.SPEED,
                            ReadingKind.BRIDGE_VOLTS,
                            ReadingKind.BATTERY_VOLTS,
                            ReadingKind.BATTERY_AMPS,
                            ReadingKind.LEAD_AMPS)));
        }
        NozzleGroup built = numbers.nozzles().asBuilt();
        steps.add(new StartStep(
                Kind.HOURS,
                built.name(),
                read(
                        built,
                        LoadState.BUS,
                        ReadingKind.WINDING_TEMPERATURE,
                        ReadingKind.SPEED,
                        ReadingKind.BATTERY_VOLTS,
                        ReadingKind.BATTERY_AMPS)));
        return List.copyOf(steps);
    }

    private List<Line> fill() {
        double volume = 0;
        double least = Double.POSITIVE_INFINITY;
        for (SectionNumbers section : numbers.penstock().sections()) {
            volume += section.area() * section.length();
            least = Math.min(least, section.area());
        }
        double flow = FILLING * least;
        return List.of(
                new Line(
                        "FILLING_FLOW",
                        QuantityKind.VOLUME_FLOW,
                        null,
                        flow,
                        0,
                        flow,
                        OptionalDouble.of(flow),
                        "penstock/filling"),
                exact("FILLING_TIME", QuantityKind.TIME, volume / flow));
    }

    private static Line exact(String name, QuantityKind kind, double value) {
        return new Line(name, kind, null, value, value, value, OptionalDouble.empty(), "");
    }

    /** Null where nobody says what pipe and joints hold: then there is nothing to test against. */
    private @Nullable Line pressureTest() {
        double weakest = numbers.penstock().fittingsRating().or(Double.POSITIVE_INFINITY);
        for (SectionNumbers section : numbers.penstock().sections()) {
            weakest = Math.min(weakest, section.rating().or(Double.POSITIVE_INFINITY));
        }
        double holds = weakest;
        if (!Double.isFinite(holds)) {
            return null;
        }
        Amount highest =
                HighestPressure.anywhere(plant.solve(), p -> p <= holds).pressure();
        double standing = plant.solve().shut().sections().stream()
                .mapToDouble(p -> p)
                .max()
                .orElse(0);
        double pressure = highest instanceof Amount.Known known
                ? known.value() + TEST_ABOVE
                : Math.min(1.5 * (standing + SURGE_ALLOWED), standing + SURGE_ALLOWED + TEST_ABOVE_ALLOWED);
        return new Line(
                "TEST_PRESSURE",
                QuantityKind.PRESSURE,
                null,
                pressure,
                pressure,
                pressure,
                OptionalDouble.of(weakest),
                "penstock/static-pressure");
    }

    private List<Line> read(NozzleGroup set, LoadState state, ReadingKind... what) {
        List<Line> lines = new ArrayList<>();
        for (ReadingKind one : what) {
            lines.addAll(read(new Channel(set.name(), state, one)));
        }
        return lines;
    }

    private List<Line> read(Channel channel) {
        if (!expected.known(channel)) {
            return List.of();
        }
        double value = expected.value(channel);
        double range = COVERAGE
                * Math.hypot(expected.uncertainty(channel), channel.what().usualUncertainty(value));
        OptionalDouble stop = OptionalDouble.empty();
        String rule = "";
        for (StopLimit limit : limits) {
            if (limit.what() == channel.what() && (stop.isEmpty() || limit.most() < stop.getAsDouble())) {
                stop = OptionalDouble.of(limit.most());
                rule = limit.rule();
            }
        }
        double low = channel.what() == ReadingKind.BATTERY_AMPS ? value - range : Math.max(0, value - range);
        return List.of(
                new Line(channel.what().name(), channel.what().kind(), channel, value, low, value + range, stop, rule));
    }

    /**
     * One step of a first start.
     *
     * @param kind of step
     * @param nozzles name of the set open; "" where none is
     * @param lines what is read
     */
    public record StartStep(Kind kind, String nozzles, List<Line> lines) {
        public StartStep {
            lines = List.copyOf(lines);
        }

        /** The steps, in the order a careful person takes. */
        public enum Kind {
            /** the pipe filled slowly, the air let out. */
            FILL,
            /** the pipe under its test pressure. */
            PRESSURE_TEST,
            /** the full pipe standing, every nozzle shut. */
            STANDING,
            /** the smallest nozzle, nothing connected to the alternator's leads. */
            OPEN_LEADS,
            /** dump load and second guard, the battery disconnected, the smallest nozzle. */
            DUMP_LOAD,
            /** the smallest nozzle on the bus. */
            FIRST_ON_BUS,
            /** a larger nozzle on the bus. */
            NEXT_ON_BUS,
            /** hours of running, with what gets warm. */
            HOURS
        }

        /**
         * One thing that is read.
         *
         * @param name of what is read: that of a {@link ReadingKind}, or of what is only done here
         * @param kind what its number measures
         * @param channel the reading it becomes; null where it is only done here
         * @param expected SI
         * @param low least value as expected, SI: uncertainty of the design and of a usual instrument together, 95 %
         * @param high greatest value as expected, SI
         * @param stop above which the water is shut, SI; empty where no rule limits it
         * @param rule whose limit that is; "" without one
         */
        public record Line(
                String name,
                QuantityKind kind,
                @Nullable Channel channel,
                double expected,
                double low,
                double high,
                OptionalDouble stop,
                String rule) {

            /** {@return whether a sound plant itself may read more than the limit: then it is no plant to be started} */
            public boolean beyond() {
                return stop.isPresent() && expected > stop.getAsDouble();
            }
        }
    }

    /**
     * A reading beyond which a start is broken off: it comes from a rule's limit, never from what is expected.
     *
     * @param what is read
     * @param most SI; above it the water is shut
     * @param rule whose limit it is, as {@code penstock/static-pressure}
     */
    public record StopLimit(ReadingKind what, double most, String rule) {}
}
