package org.leat.readings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apiguardian.api.API;
import org.leat.lazy.Once;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;

/**
 * What every fault of a plant, at every size, lets one read on every nozzle set, and how far a sound plant may be from it by the
 * tolerances of building. Each fault on each set is solved when it is first asked for, and once for a plant: after that a diagnosis
 * solves nothing. Safe to share.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class FaultTable {

    /** Sizes at which a fault is solved. */
    private static final int STEPS = 13;

    /**
     * One fault on one nozzle set.
     *
     * @param sizes at which it was solved
     * @param values by size and slot
     * @param moved by size, tolerance and slot: what one standard uncertainty of it moves
     */
    @SuppressWarnings("ArrayRecordComponent") // numbers that are only read
    record Row(double[] sizes, double[][] values, double[][][] moved) {}

    private final Expectations expectations;
    private final List<NozzleGroup> sets;
    private final List<FaultKind> kinds;
    private final Map<FaultKind, List<Once<Row>>> rows = new EnumMap<>(FaultKind.class);

    private FaultTable(Expectations expectations) {
        this.expectations = expectations;
        Plant plant = expectations.plant();
        this.sets = expectations.sets();
        FaultyPlants faulty = new FaultyPlants(plant);
        this.kinds = faulty.possible();
        Once<List<FaultyPlants>> off = new Once<>(
                () -> Offsets.of(plant).stream().map(FaultyPlants::new).toList());
        for (FaultKind kind : kinds) {
            List<Once<Row>> bySet = new ArrayList<>();
            for (int set = 0; set < sets.size(); set++) {
                int place = set;
                bySet.add(new Once<>(() -> kind == FaultKind.NOTHING
                        ? sound(expectations.at(place))
                        : row(faulty, off.get(), kind, place)));
            }
            rows.put(kind, bySet);
        }
    }

    /** {@return the table of a plant of which it is known what is expected} */
    public static FaultTable of(Expectations expectations) {
        return new FaultTable(expectations);
    }

    private static Row sound(Expectations.Expected expected) {
        return new Row(new double[] {1}, new double[][] {expected.values()}, new double[][][] {expected.moved()});
    }

    private Row row(FaultyPlants faulty, List<FaultyPlants> off, FaultKind kind, int place) {
        NozzleGroup set = sets.get(place);
        double[] sizes = faulty.sizes(kind, STEPS);
        double[][] values = new double[sizes.length][];
        for (int i = 0; i < sizes.length; i++) {
            values[i] = ReadingModel.of(faulty.of(kind, sizes[i], set), set);
        }
        double[][][] moved = new double[sizes.length][][];
        if (stepped(kind)) {
            // dear to solve again: as far off as the sound plant in proportion
            Expectations.Expected sound = expectations.at(place);
            moved[0] = inProportion(sound.moved(), sound.values(), values[0]);
            return new Row(sizes, values, moved);
        }
        int[] nodes = nodes(sizes.length);
        for (int node : nodes) {
            moved[node] = new double[off.size()][];
            for (int b = 0; b < off.size(); b++) {
                double[] there = ReadingModel.of(off.get(b).of(kind, sizes[node], set), set);
                moved[node][b] = Offsets.sensitivity(values[node], there);
            }
        }
        between(moved, nodes);
        return new Row(sizes, values, moved);
    }

    private static int[] nodes(int sizes) {
        return sizes == 1
                ? new int[] {0}
                : sizes < 4 ? new int[] {0, sizes - 1} : new int[] {0, sizes / 2, 3 * sizes / 4, sizes - 1};
    }

    static boolean stepped(FaultKind kind) {
        return kind == FaultKind.PHASE_OPEN || kind == FaultKind.DIODE_OPEN || kind == FaultKind.DIODE_SHORTED;
    }

    private static double[][] inProportion(double[][] moved, double[] sound, double[] values) {
        double[][] scaled = new double[moved.length][];
        for (int b = 0; b < moved.length; b++) {
            scaled[b] = moved[b].clone();
            for (int s = 0; s < scaled[b].length; s++) {
                scaled[b][s] *= sound[s] == 0 ? 1 : Math.abs(values[s] / sound[s]);
            }
        }
        return scaled;
    }

    /** Fills in what was not solved, straight between what was. */
    private static void between(double[][][] moved, int[] nodes) {
        for (int n = 0; n + 1 < nodes.length; n++) {
            int from = nodes[n];
            int to = nodes[n + 1];
            for (int i = from + 1; i < to; i++) {
                double t = (double) (i - from) / (to - from);
                moved[i] = new double[moved[from].length][];
                for (int b = 0; b < moved[from].length; b++) {
                    moved[i][b] = mixed(moved[from][b], moved[to][b], t);
                }
            }
        }
    }

    static double[] mixed(double[] from, double[] to, double t) {
        double[] mix = new double[from.length];
        for (int s = 0; s < mix.length; s++) {
            mix[s] = from[s] + t * (to[s] - from[s]);
        }
        return mix;
    }

    /** {@return what is expected of the sound plant} */
    public Expectations expectations() {
        return expectations;
    }

    /** {@return the faults that this plant can have, nothing first} */
    public List<FaultKind> kinds() {
        return kinds;
    }

    Row row(FaultKind kind, int set) {
        List<Once<Row>> bySet = rows.get(kind);
        if (bySet == null) {
            throw new IllegalArgumentException("the plant cannot have " + kind);
        }
        return bySet.get(set).get();
    }
}
