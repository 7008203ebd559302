package org.leat.readings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

/**
 * Plants built off their drawing, each with one fault planted at three sizes, read with noise and diagnosed. Counts how often the
 * fault, or a group it cannot be told from, is named first, and how often what is called so many per cent likely is right.
 */
final class FaultStudy {

    /** Which readings are taken. */
    enum Taken {
        TWO_SETS,
        ONE_SET,
        THREE
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
    private static final Set<ReadingKind> THREE =
            Set.of(ReadingKind.SPEED, ReadingKind.BATTERY_AMPS, ReadingKind.RUNNING_PRESSURE);

    /** A plant whose circuit is simulated takes a second: of so many draws one is built anew and simulated, noise is drawn for each. */
    static final int NOISE_A_BUILD = 25;

    private final String name;
    private final Plant plant;
    private final Expectations expected;
    private final FaultTable table;
    private final FaultyPlants drawn;
    private final Path folder;
    private final long seed;

    FaultStudy(String name, long seed, Path folder) {
        this.name = name;
        this.plant = DemoPlants.of(name);
        this.expected = Expectations.of(plant);
        this.table = FaultTable.of(expected);
        this.drawn = new FaultyPlants(plant);
        this.folder = folder;
        this.seed = seed;
    }

    List<FaultKind> kinds() {
        return table.kinds();
    }

    /** {@return the plant as it may have been built} */
    private Plant built(Random random) {
        PlantNumbers numbers = plant.numbers();
        for (BuildTolerance tolerance : BuildTolerance.all(numbers)) {
            double off = Math.max(-2.5, Math.min(2.5, random.nextGaussian())) * tolerance.standard();
            // nothing passes what it can be
            double least = tolerance.what().equals("jet velocity") ? Math.min(0, off) : Math.max(-0.9, off);
            numbers = tolerance.change().apply(numbers, least);
        }
        return plant.withNumbers(numbers);
    }

    /** {@return how many sizes of a fault are planted: small, middle, large, or each bore that is another} */
    int sizes(FaultKind kind) {
        return kind.sized() ? 3 : Math.min(2, drawn.sizes(kind, 1).length);
    }

    /** A size out of its third of the fault's range, which together stand for how it is taken to come. */
    private double size(FaultKind kind, int place, Random random) {
        if (!kind.sized()) {
            double[] all = drawn.sizes(kind, 1);
            return place == 0 ? all[0] : all[all.length - 1];
        }
        double low = Math.log(kind.least());
        double third = (Math.log(kind.most()) - low) / 3;
        return Math.exp(low + (place + random.nextDouble()) * third);
    }

    private List<NozzleGroup> sets() {
        return expected.sets().subList(0, Math.min(2, expected.sets().size()));
    }

    /** What is read without noise, on each of the sets; a fault of one nozzle is in that of the first. */
    private List<double[]> values(Plant built, FaultKind kind, double size) {
        List<double[]> values = new ArrayList<>();
        // builds run beside each other, each simulation in the folder of its thread
        Path scratch = folder.resolve("thread-" + Thread.currentThread().getId());
        if (SimulatedMachine.simulates(kind)) {
            made(scratch);
        }
        for (NozzleGroup set : sets()) {
            boolean first = values.isEmpty();
            FaultKind here = kind.ofOneNozzle() && !first ? FaultKind.NOTHING : kind;
            values.add(new PlantedFault(built, here, size, new SimulatedMachine(scratch)).read(set));
        }
        return values;
    }

    private static void made(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is read on a plant, in all the ways. */
    private Map<Taken, List<Observation>> read(List<double[]> values, boolean shaped, Random random) {
        Map<Taken, List<Observation>> all = new EnumMap<>(Taken.class);
        for (Taken taken : Taken.values()) {
            all.put(taken, new ArrayList<>());
        }
        for (int place = 0; place < values.size(); place++) {
            String set = sets().get(place).name();
            double[] here = values.get(place);
            List<Channel> channels = new ArrayList<>();
            if (place == 0) {
                channels.add(Channel.standing());
                for (ReadingKind what : List.of(ReadingKind.SPEED, ReadingKind.LEAD_VOLTS, ReadingKind.LEAD_SPREAD)) {
                    channels.add(new Channel(set, LoadState.OPEN, what));
                }
            }
            ALL.forEach(what -> channels.add(new Channel(set, LoadState.BUS, what)));
            for (Channel channel : channels) {
                double value = here[channel.slot()];
                if (Double.isFinite(value) && expected.known(channel)) {
                    Observation seen = seen(channel, value, shaped, random);
                    all.get(Taken.TWO_SETS).add(seen);
                    if (place == 0) {
                        all.get(Taken.ONE_SET).add(seen);
                    }
                    if (place == 0 && channel.state() == LoadState.BUS && THREE.contains(channel.what())) {
                        all.get(Taken.THREE).add(seen);
                    }
                }
            }
        }
        return all;
    }

    private static Observation seen(Channel channel, double value, boolean shaped, Random random) {
        double standard = channel.what().usualUncertainty(value);
        double unknown = 2 * random.nextDouble() - 1;
        double model = shaped && channel.what() == ReadingKind.LEAD_VOLTS && channel.state() == LoadState.BUS
                ? LeadVolts.SHAPE * Math.sqrt(3) * unknown * value
                : 0;
        double read = value + model + standard * random.nextGaussian();
        return new Observation(
                channel,
                channel.toString(),
                channel.what() == ReadingKind.LEAD_SPREAD ? Math.abs(read) : read,
                standard);
    }

    /** {@return whether a fault moves any reading by three standard uncertainties} */
    private boolean moves(List<double[]> values, List<Observation> readings) {
        for (Observation seen : readings) {
            int place = expected.place(seen.channel());
            double off = (values.get(place)[seen.channel().slot()] - expected.value(seen.channel()))
                    / Math.hypot(seen.standard(), expected.uncertainty(seen.channel()));
            if (Math.abs(off) >= 3) {
                return true;
            }
        }
        return false;
    }

    /** {@return whether a fault moves all readings together so far that they would show it} */
    private boolean shows(List<double[]> values, List<Observation> readings) {
        // what is not told under the fault is taken as under none, as the diagnosis takes it
        double[] there = readings.stream()
                .mapToDouble(seen -> {
                    double value = values.get(expected.place(seen.channel()))[
                            seen.channel().slot()];
                    return Double.isFinite(value) ? value : expected.value(seen.channel());
                })
                .toArray();
        return Hypothesis.Sound.of(table, readings).shows(there);
    }

    /** What the plant as drawn would let one read with the fault, on each of the sets. */
    private List<double[]> undisturbed(FaultKind kind, double size) {
        List<double[]> values = new ArrayList<>();
        for (NozzleGroup set : sets()) {
            FaultKind here = kind.ofOneNozzle() && !values.isEmpty() ? FaultKind.NOTHING : kind;
            values.add(ReadingModel.of(drawn.of(here, size, set), set));
        }
        return values;
    }

    /**
     * {@return what came of a fault of a size, drawn so often, in each way of reading} On all processors, each build with a seed of
     * its own, so that the counts are the same on any number of them.
     */
    Map<Taken, FaultTally> study(FaultKind kind, int place, int draws) {
        int noises = SimulatedMachine.simulates(kind) ? NOISE_A_BUILD : 1;
        List<double[]> unsized = kind.sized() ? List.of() : undisturbed(kind, size(kind, place, new Random(0)));
        return IntStream.range(0, (draws + noises - 1) / noises)
                .parallel()
                .mapToObj(build -> ofOneBuild(kind, place, build, Math.min(noises, draws - build * noises), unsized))
                .reduce(new EnumMap<>(Taken.class), FaultStudy::together);
    }

    private Map<Taken, FaultTally> ofOneBuild(
            FaultKind kind, int place, int build, int noises, List<double[]> unsized) {
        Random random = new Random(mixed(31 * (31 * seed + name.hashCode())
                + 101L * kind.name().hashCode()
                + place
                + 0x9E3779B97F4A7C15L * (build + 1)));
        double size = size(kind, place, random);
        List<double[]> values = values(built(random), kind, size);
        List<double[]> undisturbed = kind.sized() ? undisturbed(kind, size) : unsized;
        boolean sound = kind == FaultKind.NOTHING;
        Map<Taken, FaultTally> tallies = new EnumMap<>(Taken.class);
        for (int i = 0; i < noises; i++) {
            Map<Taken, List<Observation>> read = read(values, !SimulatedMachine.simulates(kind), random);
            for (Taken taken : Taken.values()) {
                List<Observation> readings = read.get(taken);
                tallies.computeIfAbsent(taken, t -> new FaultTally())
                        .count(
                                kind,
                                Diagnosis.of(table, readings),
                                sound || moves(undisturbed, readings),
                                sound || shows(undisturbed, readings));
            }
        }
        return tallies;
    }

    /** Seeds that differ by little begin alike; these do not (the finalizer of SplitMix64). */
    private static long mixed(long seed) {
        long z = (seed ^ (seed >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    private static Map<Taken, FaultTally> together(Map<Taken, FaultTally> one, Map<Taken, FaultTally> other) {
        Map<Taken, FaultTally> all = new EnumMap<>(Taken.class);
        for (Map<Taken, FaultTally> some : List.of(one, other)) {
            some.forEach((taken, tally) ->
                    all.computeIfAbsent(taken, t -> new FaultTally()).add(tally));
        }
        return all;
    }

    /**
     * Runs the study and writes a line for each plant, fault, size and way of reading; what a file already holds is not run again, so
     * that a run that was stopped goes on. Arguments: draws, seed, folder, names of plants (all if none).
     */
    public static void main(String[] args) throws IOException {
        int draws = Integer.parseInt(args[0]);
        long seed = Long.parseLong(args[1]);
        Path folder = Files.createDirectories(Path.of(args[2]));
        for (String name : args.length > 3 ? List.of(args).subList(3, args.length) : DemoPlants.NAMES) {
            Path file = folder.resolve(name + ".csv");
            Set<String> done = new HashSet<>();
            if (Files.exists(file)) {
                for (String line : Files.readAllLines(file)) {
                    done.add(line.substring(0, line.indexOf(' ')));
                }
            }
            Path scratch = Files.createTempDirectory("circuit");
            FaultStudy study = new FaultStudy(name, seed, scratch);
            for (FaultKind kind : study.kinds()) {
                for (int i = 0; i < study.sizes(kind); i++) {
                    String key = name + ";" + kind + ";" + i;
                    if (done.contains(key + ";" + Taken.THREE)) {
                        continue;
                    }
                    StringBuilder lines = new StringBuilder();
                    study.study(kind, i, draws)
                            .forEach((taken, tally) -> lines.append(key)
                                    .append(';')
                                    .append(taken)
                                    .append(' ')
                                    .append(tally.line())
                                    .append('\n'));
                    Files.writeString(
                            file,
                            lines,
                            java.nio.file.StandardOpenOption.CREATE,
                            java.nio.file.StandardOpenOption.APPEND);
                }
            }
        }
        FaultStudyReport.main(new String[] {folder.toString()});
    }
}
