package org.leat.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.leat.readings.Diagnosis.Pair;

/**
 * Two faults together, for readings that no single one explains: what each moves is added. Exact for small faults, good enough to say
 * which two to look at.
 */
final class FaultPairs {

    /** Of the solved sizes, each so manieth is looked at. */
    private static final int COARSER = 2;

    private final FaultTable table;
    private final List<Observation> readings;

    FaultPairs(FaultTable table, List<Observation> readings) {
        this.table = table;
        this.readings = readings;
    }

    /** {@return the likeliest pairs, at most so many} */
    List<Pair> likeliest(int most) {
        record Scored(Pair pair, double log) {}
        List<Scored> all = new ArrayList<>();
        List<FaultKind> kinds = table.kinds();
        FaultReader sound = new FaultReader(table, FaultKind.NOTHING, -1);
        double[] base = values(sound, 0);
        for (int a = 1; a < kinds.size(); a++) {
            for (int b = a + 1; b < kinds.size(); b++) {
                Scored scored = null;
                double sum = Double.NEGATIVE_INFINITY;
                int looked = 0;
                FaultReader one = reader(kinds.get(a));
                FaultReader other = reader(kinds.get(b));
                for (int i = 0; i < one.nodes(); i += COARSER) {
                    double[] first = values(one, i);
                    Evidence evidence = evidence(one, i);
                    for (int j = 0; j < other.nodes(); j += COARSER) {
                        double[] both = values(other, j);
                        for (int r = 0; r < both.length; r++) {
                            both[r] += first[r] - base[r];
                        }
                        Evidence.Part off = evidence.against(both);
                        double log = evidence.between(off, off, 0).logLikelihood();
                        looked++;
                        sum = Math.max(sum, log) + Math.log1p(Math.exp(-Math.abs(sum - log)));
                        if (scored == null || log > scored.log()) {
                            scored = new Scored(
                                    new Pair(kinds.get(a), kinds.get(b), size(one, i), size(other, j), 0), log);
                        }
                    }
                }
                if (scored != null) {
                    double weight =
                            Math.log(kinds.get(a).weight() * kinds.get(b).weight());
                    all.add(new Scored(scored.pair(), sum - Math.log(looked) + weight));
                }
            }
        }
        all.sort(Comparator.comparingDouble((Scored s) -> -s.log()));
        double best = all.isEmpty() ? 0 : all.get(0).log();
        double whole = all.stream().mapToDouble(s -> Math.exp(s.log() - best)).sum();
        return all.stream()
                .limit(most)
                .map(s -> new Pair(
                        s.pair().one(),
                        s.pair().other(),
                        s.pair().sizeOfOne(),
                        s.pair().sizeOfOther(),
                        Math.exp(s.log() - best) / whole))
                .toList();
    }

    /** A fault of one nozzle is looked for on the set read first. */
    private FaultReader reader(FaultKind kind) {
        int set = -1;
        if (kind.ofOneNozzle()) {
            set = readings.stream()
                    .filter(r -> r.channel().state() != LoadState.SHUT)
                    .mapToInt(r -> table.expectations().place(r.channel()))
                    .findFirst()
                    .orElse(0);
        }
        return new FaultReader(table, kind, set);
    }

    private static double size(FaultReader reader, int node) {
        return reader.size(node);
    }

    private double[] values(FaultReader reader, int node) {
        return readings.stream()
                .mapToDouble(r -> reader.at(r.channel()).value(node))
                .toArray();
    }

    private Evidence evidence(FaultReader reader, int node) {
        double[] model = new double[readings.size()];
        double[][] moved = new double[readings.size()][];
        for (int i = 0; i < model.length; i++) {
            model[i] = reader.at(readings.get(i).channel()).model(node);
            moved[i] = reader.at(readings.get(i).channel()).moved(node);
        }
        return new Evidence(readings, model, moved);
    }
}
