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
import org.leat.readings.StartStep.Kind;
import org.leat.readings.StartStep.Line;

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
}
