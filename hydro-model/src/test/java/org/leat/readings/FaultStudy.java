package org.leat.readings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;

/**
 * Plants built slightly off their drawing, each with one fault planted at three sizes, read with noise and diagnosed. Counts how often
 * the fault, or a group it cannot be told from, is named first, and how often what is called so many per cent likely is right.
 */
final class FaultStudy {

    /** Which readings are taken. */
    enum Taken {
        ALL,
        THREE,
        TWO_SETS
    }

    /** What came of many diagnoses. */
    static final class Tally {
        int draws;
        int first;
        int group;
        int invisible;
        double sure;
        double sureWrong;
        final Map<FaultKind, Integer> instead = new EnumMap<>(FaultKind.class);

        /** By tenth of probability of the first: how many, how many right. */
        final double[] called = new double[11];

        final double[] right = new double[11];

        void add(Tally other) {
            draws += other.draws;
            first += other.first;
            group += other.group;
            invisible += other.invisible;
            sure += other.sure;
            sureWrong += other.sureWrong;
            for (int i = 0; i < called.length; i++) {
                called[i] += other.called[i];
                right[i] += other.right[i];
            }
        }
    }

    private static final List<ReadingKind> ALL = List.of(
            ReadingKind.RUNNING_PRESSURE,
            ReadingKind.FLOW,
            ReadingKind.SPEED,
            ReadingKind.LEAD_VOLTS,
            ReadingKind.BRIDGE_VOLTS,
            ReadingKind.BATTERY_VOLTS,
            ReadingKind.BRIDGE_AMPS,
            ReadingKind.BATTERY_AMPS,
            ReadingKind.LEAD_AMPS);
    private static final List<ReadingKind> THREE =
            List.of(ReadingKind.SPEED, ReadingKind.BATTERY_AMPS, ReadingKind.RUNNING_PRESSURE);

    private final Plant plant;
    private final Expectations expected;
    private final FaultTable table;
    private final Random random;

    FaultStudy(Plant plant, long seed) {
        this.plant = plant;
        this.expected = Expectations.of(plant);
        this.table = FaultTable.of(expected);
        this.random = new Random(seed);
    }

    FaultTable table() {
        return table;
    }

    /** {@return the plant as it may have been built} */
    private Plant built() {
        PlantNumbers numbers = plant.numbers();
        for (BuildTolerance tolerance : BuildTolerance.all(numbers)) {
            double off = Math.max(-2.5, Math.min(2.5, random.nextGaussian())) * tolerance.standard();
            // nothing passes what it can be
            double least = tolerance.what().equals("jet velocity") ? Math.min(0, off) : Math.max(-0.9, off);
            numbers = tolerance.change().apply(numbers, least);
        }
        return plant.withNumbers(numbers);
    }

    /** {@return the sizes at which a fault is planted} */
    static double[] sizes(FaultKind kind, FaultyPlants faulty) {
        if (!kind.sized()) {
            double[] all = faulty.sizes(kind, 1);
            return all.length > 1 ? new double[] {all[0], all[all.length - 1]} : all;
        }
        double low = Math.log(kind.least());
        double high = Math.log(kind.most());
        return new double[] {
            Math.exp(low + 0.45 * (high - low)),
            Math.exp(low + 0.65 * (high - low)),
            Math.exp(low + 0.85 * (high - low))
        };
    }

    /** {@return what is read on a plant with a fault} The first set is that as built. */
    List<Observation> read(FaultKind kind, double size, Taken taken) {
        Plant built = built();
        FaultyPlants faulty = new FaultyPlants(built);
        List<NozzleGroup> sets = new ArrayList<>(List.of(expected.sets().get(0)));
        if (taken == Taken.TWO_SETS && expected.sets().size() > 1) {
            sets.add(expected.sets().get(1));
        }
        List<Observation> readings = new ArrayList<>();
        for (NozzleGroup set : sets) {
            // a fault of one nozzle is in that of the set as built
            FaultKind here = kind.ofOneNozzle() && !set.equals(sets.get(0)) ? FaultKind.NOTHING : kind;
            double[] values = ReadingModel.of(faulty.of(here, size, set), set);
            if (taken != Taken.THREE && set.equals(sets.get(0))) {
                add(readings, Channel.standing(), values);
                for (ReadingKind what : List.of(ReadingKind.SPEED, ReadingKind.LEAD_VOLTS, ReadingKind.LEAD_SPREAD)) {
                    add(readings, new Channel(set.name(), LoadState.OPEN, what), values);
                }
            }
            for (ReadingKind what : taken == Taken.THREE ? THREE : ALL) {
                add(readings, new Channel(set.name(), LoadState.BUS, what), values);
            }
        }
        return readings;
    }

    private void add(List<Observation> readings, Channel channel, double[] values) {
        double value = values[channel.slot()];
        if (Double.isFinite(value) && expected.known(channel)) {
            double standard = channel.what().usualUncertainty(value);
            double model = channel.what() == ReadingKind.LEAD_VOLTS && channel.state() == LoadState.BUS
                    ? LeadVolts.SHAPE * Math.sqrt(3) * (2 * random.nextDouble() - 1) * value
                    : 0;
            double read = value + model + standard * random.nextGaussian();
            if (channel.what() == ReadingKind.LEAD_SPREAD) {
                read = Math.abs(read);
            }
            readings.add(new Observation(channel, channel.toString(), read, standard));
        }
    }

    /** {@return whether a fault moves any reading by three standard uncertainties} */
    boolean visible(FaultKind kind, double size, List<Observation> readings) {
        FaultyPlants faulty = new FaultyPlants(plant);
        for (Observation seen : readings) {
            int at = expected.place(seen.channel());
            NozzleGroup set = expected.sets().get(at);
            if (kind.ofOneNozzle() && at != 0) {
                continue;
            }
            double there = ReadingModel.of(faulty.of(kind, size, set), set)[
                    seen.channel().slot()];
            double off = (there - expected.value(seen.channel()))
                    / Math.hypot(seen.standard(), expected.uncertainty(seen.channel()));
            if (Math.abs(off) >= 3) {
                return true;
            }
        }
        return false;
    }

    /** {@return what came of a fault of a size, drawn so often} */
    Tally study(FaultKind kind, double size, int sizes, Taken taken, int draws) {
        Tally tally = new Tally();
        Boolean visible = null;
        for (int i = 0; i < draws; i++) {
            List<Observation> readings = read(kind, size, taken);
            if (visible == null) {
                visible = kind == FaultKind.NOTHING || visible(kind, size, readings);
            }
            tally.draws++;
            if (!visible) {
                tally.invisible++;
                continue;
            }
            Diagnosis said = Diagnosis.of(table, readings);
            Diagnosis.Ranked first = said.ranked().get(0);
            boolean named = first.kind() == kind;
            boolean grouped = named || said.twins().stream().anyMatch(t -> t.kind() == kind);
            tally.first += named ? 1 : 0;
            tally.group += grouped ? 1 : 0;
            double sure = said.probability(first.kind());
            int tenth = (int) Math.round(sure * 10);
            // faults are planted alike often, and called as often as they are: each counts by how common it is
            double weight = kind.weight() / sizes;
            tally.called[tenth] += weight;
            tally.right[tenth] += named ? weight : 0;
            if (sure > 0.9) {
                tally.sure += weight;
                tally.sureWrong += named ? 0 : weight;
            }
            if (!named) {
                tally.instead.merge(first.kind(), 1, Integer::sum);
            }
        }
        return tally;
    }

    /** Prints the table: arguments are the number of draws and the names of plants. */
    public static void main(String[] args) {
        int draws = args.length > 0 ? Integer.parseInt(args[0]) : 100;
        List<String> names = args.length > 1 ? List.of(args).subList(1, args.length) : DemoPlants.NAMES;
        Map<Taken, Tally> whole = new TreeMap<>();
        Map<Taken, Tally> sound = new TreeMap<>();
        StringBuilder out = new StringBuilder();
        for (String name : names) {
            FaultStudy study = new FaultStudy(DemoPlants.of(name), 20310501);
            for (Taken taken : Taken.values()) {
                for (FaultKind kind : study.table().kinds()) {
                    double[] sizes = sizes(kind, new FaultyPlants(study.plant));
                    for (double size : sizes) {
                        Tally tally = study.study(kind, size, sizes.length, taken, draws);
                        (kind == FaultKind.NOTHING ? sound : whole)
                                .computeIfAbsent(taken, t -> new Tally())
                                .add(tally);
                        out.append(String.format(
                                Locale.ROOT,
                                "%-15s %-8s %-20s %8.4f %5d %5d %5d %5.1f %s%n",
                                name,
                                taken,
                                kind,
                                size,
                                tally.draws - tally.invisible,
                                tally.first,
                                tally.group,
                                tally.sureWrong,
                                tally.instead));
                    }
                }
            }
        }
        System.out.print(out);
        for (Taken taken : Taken.values()) {
            Tally all = whole.get(taken);
            Tally none = sound.get(taken);
            int seen = all.draws - all.invisible;
            System.out.printf(
                    Locale.ROOT,
                    "%s: visible %d of %d, first %.1f %%, in group %.1f %%; sound %.1f %%; above 90 %%: %.0f, wrong %.1f %%%n",
                    taken,
                    seen,
                    all.draws,
                    100.0 * all.first / seen,
                    100.0 * all.group / seen,
                    100.0 * none.first / none.draws,
                    all.sure + none.sure,
                    100.0 * (all.sureWrong + none.sureWrong) / Math.max(1e-9, all.sure + none.sure));
            all.add(none);
            for (int i = 0; i < 11; i++) {
                System.out.printf(
                        Locale.ROOT,
                        "   called %3d %%: %7.1f, right %.1f %%%n",
                        10 * i,
                        all.called[i],
                        100.0 * all.right[i] / Math.max(1e-9, all.called[i]));
            }
        }
    }
}
