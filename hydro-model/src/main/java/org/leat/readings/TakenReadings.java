package org.leat.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.Quantity;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.law.Gravity;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.EnergyAccount;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

/**
 * Readings taken back from a plant, each given its channel and its uncertainty: those that can be set against what is expected, those
 * that cannot be, and those of something that the design has not.
 *
 * @param readings that can be set against what is expected
 * @param impossible readings outside what physics allows on this plant; never fitted
 * @param misplaced readings that no number of the plant answers to
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record TakenReadings(List<Observation> readings, List<ImpossibleReading> impossible, List<Misplaced> misplaced) {

    /** Tolerances of building over which a bound of physics is not sharp, a share. */
    private static final double SLACK = 0.1;

    public TakenReadings {
        readings = List.copyOf(readings);
        impossible = List.copyOf(impossible);
        misplaced = List.copyOf(misplaced);
    }

    /** Why a reading has no place. */
    public enum Why {
        /** the design has no such nozzle set. */
        NO_SUCH_SET,
        /** such a thing is not read in that state. */
        NOT_IN_THAT_STATE,
        /** the design does not tell what it would be. */
        NOT_TOLD,
        /** a gauge that would hang above the whole fall; the pressures are taken as those at the nozzle axis. */
        GAUGE_ABOVE_FALL
    }

    /**
     * A reading that no number of the plant answers to.
     *
     * @param path in the file of readings
     * @param why it has no place
     * @param choices names of the nozzle sets, where that is what is wrong
     */
    public record Misplaced(String path, Why why, List<String> choices) {
        public Misplaced {
            choices = List.copyOf(choices);
        }
    }

    /**
     * {@return the readings of a file, each with its place on the plant}
     *
     * @param expected of every nozzle set of the plant
     */
    public static TakenReadings of(PlantReadings file, Expectations expected) {
        Collector collector = new Collector(file.instruments(), file.gaugeAboveNozzle(), expected);
        collector.standing(file.standingPressure());
        for (int i = 0; i < file.sets().size(); i++) {
            collector.set(file.sets().get(i), "/sets[" + i + "]");
        }
        return collector.taken();
    }

    /** {@return readings of nozzle sets by their path in a file, taken with usual instruments, each with its place on the plant} */
    static TakenReadings of(Map<String, SetReadings> sets, Expectations expected) {
        Collector collector = new Collector(null, null, expected);
        sets.forEach((path, set) -> collector.set(set, path));
        return collector.taken();
    }

    /** {@return the nozzle set meant by a name or by bores; null where there is none} */
    static @Nullable NozzleGroup meant(@Nullable String name, List<NozzleGroup> sets) {
        if (name == null) {
            return sets.get(0);
        }
        String bare = bare(name);
        for (NozzleGroup set : sets) {
            if (bare.equals(bare(set.name()))
                    || bare.replace("mm", "")
                            .equals(bare(NozzleGroup.nameOf(set.bores())).replace("mm", ""))) {
                return set;
            }
        }
        return null;
    }

    private static String bare(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
    }

    private static final class Collector {
        private final @Nullable Instruments has;
        private final Expectations expected;
        private final Bounds bounds;
        private final List<Observation> readings = new ArrayList<>();
        private final List<ImpossibleReading> impossible = new ArrayList<>();
        private final List<Misplaced> misplaced = new ArrayList<>();
        private final double gaugeHead;

        Collector(@Nullable Instruments has, @Nullable Quantity<?> above, Expectations expected) {
            this.has = has;
            this.expected = expected;
            this.bounds = Bounds.of(expected);
            double weight = expected.plant().numbers().water().specificWeight();
            double head = above == null ? 0 : Si.of(above);
            boolean beyond = Math.abs(head) > expected.plant().numbers().site().grossHead();
            if (beyond) {
                misplaced.add(new Misplaced("/gauge-above-nozzle", Why.GAUGE_ABOVE_FALL, List.of()));
            }
            this.gaugeHead = beyond ? 0 : weight * head;
        }

        /** What was collected; what changed places with another of its line is left out. */
        TakenReadings taken() {
            List<Observation> all = new ArrayList<>(readings);
            impossible.forEach(one -> all.add(one.reading()));
            List<Observation> changed = new ChangedPlaces(expected).certain(all);
            readings.removeAll(changed);
            impossible.removeIf(one -> changed.contains(one.reading()));
            for (Observation one : changed) {
                impossible.add(new ImpossibleReading(
                        one, ImpossibleReading.Why.CHANGED_PLACES, 0, ImpossibleReading.Slip.NONE));
            }
            sameSlip();
            return new TakenReadings(readings, impossible, misplaced);
        }

        /** A counter that shows two marks shows them in all its readings, also in those that could be. */
        private void sameSlip() {
            List<ImpossibleReading> known = impossible.stream()
                    .filter(one -> one.slip() != ImpossibleReading.Slip.NONE
                            && one.slip() != ImpossibleReading.Slip.SIGN
                            && one.slip() != ImpossibleReading.Slip.PEAK_FOR_RMS)
                    .toList();
            for (Observation seen : List.copyOf(readings)) {
                ImpossibleReading.Slip slip = slip(seen, expected);
                double standard = Math.hypot(seen.standard(), expected.uncertainty(seen.channel()));
                boolean far = Math.abs(seen.value() - expected.value(seen.channel())) > ChangedPlaces.FAR * standard;
                boolean same = known.stream()
                        .anyMatch(one -> one.slip() == slip
                                && one.reading().channel().what()
                                        == seen.channel().what());
                if (far && same) {
                    readings.remove(seen);
                    impossible.add(new ImpossibleReading(seen, ImpossibleReading.Why.SAME_SLIP, 0, slip));
                }
            }
        }

        void standing(@Nullable Measured<?> read) {
            add(Channel.standing(), "/standing-pressure", read);
        }

        void set(SetReadings read, String path) {
            NozzleGroup set = meant(read.nozzles(), expected.sets());
            if (set == null) {
                misplaced.add(new Misplaced(
                        path + "/nozzles",
                        Why.NO_SUCH_SET,
                        expected.sets().stream().map(NozzleGroup::name).toList()));
                return;
            }
            LoadState state = read.state();
            String name = set.name();
            add(
                    new Channel(name, state, ReadingKind.RUNNING_PRESSURE),
                    path + "/running-pressure",
                    read.runningPressure());
            add(
                    new Channel(name, state, ReadingKind.MIDWAY_PRESSURE),
                    path + "/midway-pressure",
                    read.midwayPressure());
            add(new Channel(name, state, ReadingKind.FLOW), path + "/flow", read.flow());
            add(new Channel(name, state, ReadingKind.INTAKE_FLOW), path + "/intake-flow", read.intakeFlow());
            add(new Channel(name, state, ReadingKind.SPEED), path + "/speed", read.speed());
            add(new Channel(name, state, ReadingKind.FREQUENCY), path + "/frequency", read.frequency());
            leads(read, name, state, path + "/volts-between-leads");
            add(new Channel(name, state, ReadingKind.BRIDGE_VOLTS), path + "/bridge-volts", read.bridgeVolts());
            add(new Channel(name, state, ReadingKind.BATTERY_VOLTS), path + "/battery-volts", read.batteryVolts());
            add(new Channel(name, state, ReadingKind.BRIDGE_AMPS), path + "/bridge-amps", read.bridgeAmps());
            add(new Channel(name, state, ReadingKind.BATTERY_AMPS), path + "/battery-amps", read.batteryAmps());
            add(new Channel(name, state, ReadingKind.LEAD_AMPS), path + "/lead-amps", read.leadAmps());
            Quantity<?> winding = read.windingTemperature();
            if (winding != null) {
                add(
                        new Channel(name, state, ReadingKind.WINDING_TEMPERATURE),
                        path + "/winding-temperature",
                        Si.of(winding),
                        0);
            }
        }

        private void leads(SetReadings read, String name, LoadState state, String path) {
            double[] volts =
                    read.voltsBetweenLeads().stream().mapToDouble(Measured::si).toArray();
            if (volts.length == 0) {
                return;
            }
            for (int i = 0; i < volts.length; i++) {
                ImpossibleReading.Slip slip = pairSlip(volts, i);
                if (volts[i] < 0 || slip != ImpossibleReading.Slip.NONE) {
                    Channel at = new Channel(name, state, ReadingKind.LEAD_VOLTS);
                    double standard = uncertainty(at, volts[i], 0);
                    impossible.add(new ImpossibleReading(
                            new Observation(at, path + "[" + i + "]", volts[i], standard),
                            volts[i] < 0 ? ImpossibleReading.Why.BELOW_NIL : ImpossibleReading.Why.NO_SUCH_VALUE,
                            0,
                            volts[i] < 0 ? ImpossibleReading.Slip.SIGN : slip));
                    return;
                }
            }
            int largest = 0;
            for (int i = 1; i < volts.length; i++) {
                largest = volts[i] > volts[largest] ? i : largest;
            }
            double told = read.voltsBetweenLeads().get(largest).plusMinusSi();
            add(new Channel(name, state, ReadingKind.LEAD_VOLTS), path + "[" + largest + "]", volts[largest], told / 2);
            if (volts.length > 1 && state == LoadState.OPEN && volts[largest] > 0) {
                add(new Channel(name, state, ReadingKind.LEAD_SPREAD), path, LeadVolts.spread(volts), 0);
            }
        }

        /** One pair ten or a thousand times the other two, or that part of them, which agree: no three phases give that. */
        private static ImpossibleReading.Slip pairSlip(double[] volts, int pair) {
            if (volts.length != 3) {
                return ImpossibleReading.Slip.NONE;
            }
            double one = volts[(pair + 1) % 3];
            double other = volts[(pair + 2) % 3];
            for (ImpossibleReading.Slip slip : List.of(
                    ImpossibleReading.Slip.TEN_TIMES,
                    ImpossibleReading.Slip.A_TENTH,
                    ImpossibleReading.Slip.THOUSAND_TIMES,
                    ImpossibleReading.Slip.A_THOUSANDTH)) {
                if (Math.abs(one - other) < SLACK * Math.max(one, other)
                        && Math.abs(volts[pair] / one / slip.factor() - 1) < SLACK) {
                    return slip;
                }
            }
            return ImpossibleReading.Slip.NONE;
        }

        private void add(Channel channel, String path, @Nullable Measured<?> read) {
            if (read != null) {
                boolean pressure = channel.what() == ReadingKind.STANDING_PRESSURE
                        || channel.what() == ReadingKind.RUNNING_PRESSURE;
                add(channel, path, read.si() + (pressure ? gaugeHead : 0), read.plusMinusSi() / 2);
            }
        }

        private void add(Channel channel, String path, double value, double told) {
            if (!Channel.exists(channel.state(), channel.what())) {
                misplaced.add(new Misplaced(path, Why.NOT_IN_THAT_STATE, List.of()));
            } else if (!expected.known(channel)) {
                misplaced.add(new Misplaced(path, Why.NOT_TOLD, List.of()));
            } else {
                Observation seen = new Observation(channel, path, value, uncertainty(channel, value, told));
                ImpossibleReading cannot = bounds.against(seen);
                Observation standing = cannot == null ? standingBelow(seen) : null;
                if (standing != null) {
                    cannot = new ImpossibleReading(
                            seen, ImpossibleReading.Why.ABOVE_STANDING, standing.value(), slip(seen, expected));
                }
                if (cannot == null) {
                    readings.add(seen);
                } else {
                    impossible.add(cannot);
                }
            }
        }

        /** The standing pressure that was read, where running water would press more than that and is the stranger of the two. */
        private @Nullable Observation standingBelow(Observation seen) {
            if (seen.channel().what() == ReadingKind.RUNNING_PRESSURE) {
                for (Observation read : readings) {
                    double apart = 5 * Math.hypot(read.standard(), seen.standard());
                    if (read.channel().what() == ReadingKind.STANDING_PRESSURE
                            && seen.value() > read.value() + apart
                            && off(seen) > off(read)) {
                        return read;
                    }
                }
            }
            return null;
        }

        private double off(Observation seen) {
            return Math.abs(seen.value() - expected.value(seen.channel())) / expected.uncertainty(seen.channel());
        }

        private double uncertainty(Channel channel, double value, double told) {
            if (told > 0) {
                return told;
            }
            double usual = channel.what().usualUncertainty(value);
            if (has == null) {
                return usual;
            }
            Quantity<?> share = switch (channel.what()) {
                case FLOW, INTAKE_FLOW -> has.flow();
                case SPEED, FREQUENCY -> has.speed();
                case LEAD_VOLTS, BRIDGE_VOLTS, BATTERY_VOLTS -> has.volts();
                case BRIDGE_AMPS, BATTERY_AMPS, LEAD_AMPS -> has.amps();
                default -> null;
            };
            Quantity<?> scale = has.pressureFullScale();
            Quantity<?> grade = has.pressureClass();
            boolean pressure = channel.what().kind() == ReadingKind.STANDING_PRESSURE.kind();
            if (pressure && scale != null && grade != null) {
                return Si.of(scale) * Si.of(grade) / 2;
            }
            return share == null || !(value != 0) ? usual : Math.abs(value) * Si.of(share) / 2;
        }
    }

    /** What physics allows on a plant, whatever is wrong with it. */
    private record Bounds(Expectations expected, double fastest, double linePeak, double power, double current) {

        static Bounds of(Expectations expected) {
            double fastest = 0;
            double peak = 0;
            double power = 0;
            for (LoadLost lost : expected.plant().solve().loadLost()) {
                fastest = Math.max(fastest, lost.speed());
                peak = Math.max(peak, lost.peakLineVoltage());
            }
            for (var running : expected.plant().solve().running()) {
                power = Math.max(power, running.operatingPoint().energy().at(EnergyAccount.Stage.JET));
            }
            AlternatorNumbers alternator = expected.plant().numbers().alternator();
            double emf = peak / Math.sqrt(3);
            double pace = alternator.polePairs() * fastest * alternator.gearRatio();
            // no more than the shorted machine gives run away, twice where a diode makes it one-sided
            double impedance = Math.hypot(alternator.phaseResistanceCold(), pace * alternator.phaseInductance());
            double current = impedance > 0 ? 2 * emf / impedance / Math.sqrt(2) : Double.MAX_VALUE;
            return new Bounds(expected, fastest, peak, power, current);
        }

        @Nullable
        ImpossibleReading against(Observation seen) {
            PlantNumbers numbers = expected.plant().numbers();
            double most = most(seen.channel(), numbers);
            double allowed = most * (1 + SLACK) + 3 * seen.standard();
            boolean negative = seen.value() < -3 * seen.standard()
                    && seen.channel().what() != ReadingKind.BATTERY_AMPS
                    && seen.channel().what() != ReadingKind.WINDING_TEMPERATURE;
            if (negative) {
                return new ImpossibleReading(seen, ImpossibleReading.Why.BELOW_NIL, 0, slip(seen, expected));
            }
            boolean milli = seen.channel().what() == ReadingKind.BATTERY_VOLTS
                    && slip(seen, expected) == ImpossibleReading.Slip.A_THOUSANDTH;
            if (milli) {
                return new ImpossibleReading(
                        seen, ImpossibleReading.Why.DEAD_BATTERY, 0, ImpossibleReading.Slip.A_THOUSANDTH);
            }
            if (seen.value() < 0
                    && seen.channel().what() == ReadingKind.BATTERY_AMPS
                    && slip(seen, expected) == ImpossibleReading.Slip.SIGN) {
                return new ImpossibleReading(seen, ImpossibleReading.Why.TURNED_ROUND, 0, ImpossibleReading.Slip.SIGN);
            }
            return seen.value() > allowed
                    ? new ImpossibleReading(seen, reason(seen.channel().what()), most, slip(seen, expected))
                    : null;
        }

        private double most(Channel channel, PlantNumbers numbers) {
            // a head not as thought is a fault that is looked for; beyond that it is another plant
            double head = numbers.site().grossHead() * (1 + FaultKind.HEAD_HIGHER.most());
            double pressure = numbers.water().density() * Gravity.STANDARD * head;
            double heads = Math.sqrt(1 + FaultKind.HEAD_HIGHER.most());
            return switch (channel.what()) {
                case STANDING_PRESSURE, RUNNING_PRESSURE, MIDWAY_PRESSURE -> pressure;
                case SPEED -> fastest * heads;
                case FREQUENCY ->
                    numbers.alternator().polePairs()
                            * fastest
                            * heads
                            * numbers.alternator().gearRatio()
                            / (2 * Math.PI);
                case LEAD_VOLTS -> linePeak * heads / Math.sqrt(2);
                case BRIDGE_VOLTS -> Math.max(linePeak * heads, numbers.fullVoltage());
                case BATTERY_VOLTS -> Math.max(linePeak * heads, numbers.fullVoltage());
                case BRIDGE_AMPS, BATTERY_AMPS ->
                    Math.pow(heads, 3)
                            * 1.7
                            * power
                            / Math.max(1, numbers.battery().restingVoltage());
                case LEAD_AMPS -> current;
                case FLOW, INTAKE_FLOW -> {
                    double area = 0;
                    for (NozzleGroup set : expected.sets()) {
                        area = Math.max(area, set.area());
                    }
                    yield 2.5 * area * Math.sqrt(2 * Gravity.STANDARD * head);
                }
                case WINDING_TEMPERATURE -> 273.15 + 400;
                case LEAD_SPREAD -> 1.01;
            };
        }

        private static ImpossibleReading.Why reason(ReadingKind what) {
            return switch (what) {
                case STANDING_PRESSURE, RUNNING_PRESSURE, MIDWAY_PRESSURE -> ImpossibleReading.Why.ABOVE_HEAD;
                case SPEED, FREQUENCY -> ImpossibleReading.Why.ABOVE_RUNAWAY;
                case LEAD_VOLTS, BRIDGE_VOLTS, BATTERY_VOLTS -> ImpossibleReading.Why.ABOVE_RUNAWAY_VOLTS;
                case BRIDGE_AMPS, BATTERY_AMPS -> ImpossibleReading.Why.ABOVE_JET_POWER;
                case LEAD_AMPS -> ImpossibleReading.Why.ABOVE_SHORT_CIRCUIT;
                case FLOW, INTAKE_FLOW -> ImpossibleReading.Why.ABOVE_FREE_JET;
                case WINDING_TEMPERATURE, LEAD_SPREAD -> ImpossibleReading.Why.NO_SUCH_VALUE;
            };
        }
    }

    /**
     * {@return the reading of the same line that is what was expected of this one, as this is what was expected of that; null where
     * there is none} Far enough apart such readings are left out; nearer, a fault might move two numbers so, and they are only told.
     */
    public static @Nullable Observation changedPlaces(
            Observation seen, List<Observation> readings, Expectations expected) {
        return new ChangedPlaces(expected).with(seen, readings);
    }

    /** {@return the slip that would make a reading what is expected, within a twentieth} */
    public static ImpossibleReading.Slip slip(Observation seen, Expectations expected) {
        double wanted = expected.value(seen.channel());
        double spread = 0.05 * Math.abs(wanted) + 3 * expected.uncertainty(seen.channel());
        for (ImpossibleReading.Slip slip : ImpossibleReading.Slip.values()) {
            boolean told = Math.abs(wanted) > 2 * spread;
            if (told
                    && slip != ImpossibleReading.Slip.NONE
                    && slip.suits(seen.channel().what())
                    && Math.abs(seen.value() / slip.factor() - wanted) < spread) {
                return slip;
            }
        }
        return ImpossibleReading.Slip.NONE;
    }
}
