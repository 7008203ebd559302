package org.leat.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Diagnosis.Pair;

/**
 * Two faults together, for readings that no single one explains: what each moves is added, and the likelihood integrated over both
 * sizes. Exact for small faults, good enough to say which two to look at.
 */
final class FaultPairs {

    /** Between two sizes that were solved. */
    private static final int FINER = 6;

    /** ln of what no longer counts beside the likeliest. */
    private static final double NOTHING_BESIDE = 30;

    private final FaultTable table;
    private final List<Observation> readings;
    private final Map<FaultKind, Double> common;
    private final double[] base;

    FaultPairs(FaultTable table, List<Observation> readings, Map<FaultKind, Double> common) {
        this.table = table;
        this.readings = readings;
        this.common = common;
        this.base = values(places(new FaultReader(table, FaultKind.NOTHING, -1)), 0);
    }

    /** A fault as the readings would have it. */
    private record Fault(FaultKind kind, FaultReader reader, List<FaultReader.At> places, List<double[]> values) {}

    /** A size, and the part of the residuals that it makes or leaves. */
    private record Sized(double size, Evidence.Part part) {}

    /** Sums likelihoods as they come, and keeps the likeliest sizes. */
    private static final class Sum {
        private double most = Double.NEGATIVE_INFINITY;
        private double sum;
        private int looked;
        private double sizeOfOne = Double.NaN;
        private double sizeOfOther = Double.NaN;

        void add(double log, double one, double other) {
            looked++;
            if (log > most) {
                sum = sum * Math.exp(most - log) + 1;
                most = log;
                sizeOfOne = one;
                sizeOfOther = other;
            } else if (log > most - NOTHING_BESIDE) {
                sum += Math.exp(log - most);
            }
        }

        double log() {
            return most + Math.log(sum / looked);
        }
    }

    /** {@return the likeliest pairs, at most so many} */
    List<Pair> likeliest(int most) {
        record Scored(Pair pair, double log) {}
        List<Fault> faults = faults();
        List<Scored> all = new ArrayList<>();
        for (int a = 0; a < faults.size(); a++) {
            List<Sum> sums = new ArrayList<>();
            for (int b = a + 1; b < faults.size(); b++) {
                sums.add(new Sum());
            }
            Fault one = faults.get(a);
            for (int node = 0; node < one.reader().nodes(); node++) {
                Evidence evidence = evidence(one, node);
                List<Sized> left = left(one, node, evidence);
                for (int b = a + 1; b < faults.size(); b++) {
                    add(sums.get(b - a - 1), left, moved(faults.get(b), evidence), evidence);
                }
            }
            for (int b = a + 1; b < faults.size(); b++) {
                Sum sum = sums.get(b - a - 1);
                FaultKind other = faults.get(b).kind();
                all.add(new Scored(
                        new Pair(one.kind(), other, sum.sizeOfOne, sum.sizeOfOther, 0),
                        sum.log() + Math.log(weight(one.kind()) * weight(other))));
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

    private static void add(Sum sum, List<Sized> left, List<Sized> moved, Evidence evidence) {
        double[] own = moved.stream().mapToDouble(m -> m.part().times(m.part())).toArray();
        for (Sized one : left) {
            double squares = one.part().times(one.part());
            for (int j = 0; j < own.length; j++) {
                Sized other = moved.get(j);
                double both = squares - 2 * one.part().times(other.part()) + own[j];
                sum.add(evidence.logLikelihood(both), one.size(), other.size());
            }
        }
    }

    private double weight(FaultKind kind) {
        return common.getOrDefault(kind, kind.weight());
    }

    /** Every fault but nothing; one of a single nozzle is looked for on the set read first. */
    private List<Fault> faults() {
        int read = readings.stream()
                .filter(r -> r.channel().state() != LoadState.SHUT)
                .mapToInt(r -> table.expectations().place(r.channel()))
                .findFirst()
                .orElse(0);
        List<Fault> faults = new ArrayList<>();
        for (FaultKind kind : table.kinds()) {
            if (kind != FaultKind.NOTHING) {
                FaultReader reader = new FaultReader(table, kind, kind.ofOneNozzle() ? read : -1);
                List<FaultReader.At> places = places(reader);
                List<double[]> values = new ArrayList<>();
                for (int node = 0; node < reader.nodes(); node++) {
                    values.add(values(places, node));
                }
                faults.add(new Fault(kind, reader, places, values));
            }
        }
        return faults;
    }

    private List<FaultReader.At> places(FaultReader reader) {
        return readings.stream().map(r -> reader.at(r.channel())).toList();
    }

    private static double[] values(List<FaultReader.At> places, int node) {
        return places.stream().mapToDouble(at -> at.value(node)).toArray();
    }

    private Evidence evidence(Fault fault, int node) {
        double[] model = new double[readings.size()];
        double[][] moved = new double[readings.size()][];
        for (int i = 0; i < model.length; i++) {
            model[i] = fault.places().get(i).model(node);
            moved[i] = fault.places().get(i).moved(node);
        }
        return new Evidence(readings, model, moved);
    }

    /** What a fault leaves of the readings, from a size that was solved up to the next. */
    private static List<Sized> left(Fault fault, int node, Evidence evidence) {
        Evidence.Part from = evidence.against(fault.values().get(node));
        List<Sized> left = new ArrayList<>(List.of(new Sized(fault.reader().size(node), from)));
        if (fault.kind().sized() && node + 1 < fault.reader().nodes()) {
            steps(fault, node, from, evidence.against(fault.values().get(node + 1)), left);
        }
        return left;
    }

    /** What a fault moves, at every size. */
    private List<Sized> moved(Fault fault, Evidence evidence) {
        List<Sized> moved = new ArrayList<>();
        Evidence.Part before = null;
        for (int node = 0; node < fault.reader().nodes(); node++) {
            double[] values = fault.values().get(node).clone();
            for (int i = 0; i < values.length; i++) {
                values[i] -= base[i];
            }
            Evidence.Part part = evidence.part(values);
            if (before != null && fault.kind().sized()) {
                steps(fault, node - 1, before, part, moved);
            }
            moved.add(new Sized(fault.reader().size(node), part));
            before = part;
        }
        return moved;
    }

    private static void steps(Fault fault, int node, Evidence.Part from, Evidence.Part to, List<Sized> into) {
        double low = fault.reader().size(node);
        double high = fault.reader().size(node + 1);
        for (int f = 1; f < FINER; f++) {
            double size = low * Math.pow(high / low, (double) f / FINER);
            into.add(new Sized(size, from.mixed(to, (size - low) / (high - low))));
        }
    }
}
