package org.leat.readings;

import java.util.ArrayList;
import java.util.List;

/**
 * One fault at all its sizes, set against readings.
 *
 * @param kind of fault
 * @param set the one nozzle set that has it; −1 where all have
 * @param points every size looked at
 */
record Hypothesis(FaultKind kind, int set, List<Point> points) {

    /** Between two sizes that were solved. */
    private static final int FINER = 6;

    /**
     * One size.
     *
     * @param size of the fault
     * @param node the solved size next to it, whose uncertainties are taken
     * @param from the solved size below it
     * @param share of the way to the next solved size
     * @param said by the readings
     * @param evidence of that node
     */
    record Point(double size, int node, int from, double share, Evidence.Said said, Evidence evidence) {}

    /** {@return the hypotheses of a fault} One for each set where it can be in one nozzle alone. */
    static List<Hypothesis> all(FaultTable table, FaultKind kind, List<Observation> readings) {
        if (!kind.ofOneNozzle()) {
            return List.of(of(table, kind, -1, readings));
        }
        List<Hypothesis> all = new ArrayList<>();
        for (int set = 0; set < table.expectations().sets().size(); set++) {
            String name = table.expectations().sets().get(set).name();
            if (readings.stream().anyMatch(r -> r.channel().nozzles().equals(name))) {
                all.add(of(table, kind, set, readings));
            }
        }
        return all;
    }

    private static Hypothesis of(FaultTable table, FaultKind kind, int set, List<Observation> readings) {
        Reader reader = new Reader(table, kind, set);
        int nodes = reader.nodes();
        List<Evidence> evidence = new ArrayList<>();
        double[][] expected = new double[nodes][];
        for (int node = 0; node < nodes; node++) {
            double[] model = new double[readings.size()];
            double[][] moved = new double[readings.size()][];
            double[] values = new double[readings.size()];
            for (int i = 0; i < readings.size(); i++) {
                Channel channel = readings.get(i).channel();
                values[i] = reader.value(channel, node);
                model[i] = reader.model(channel, node);
                moved[i] = reader.moved(channel, node);
            }
            expected[node] = values;
            evidence.add(new Evidence(readings, model, moved));
        }
        List<Point> points = new ArrayList<>();
        boolean continuous = kind.sized();
        for (int node = 0; node < nodes; node++) {
            if (kind == FaultKind.NOZZLE_OTHER && reader.isOwnBore(node)) {
                continue;
            }
            points.add(new Point(
                    reader.size(node), node, node, 0, evidence.get(node).of(expected[node]), evidence.get(node)));
            for (int f = 1; continuous && node + 1 < nodes && f < FINER; f++) {
                double size =
                        reader.size(node) * Math.pow(reader.size(node + 1) / reader.size(node), (double) f / FINER);
                double share = (size - reader.size(node)) / (reader.size(node + 1) - reader.size(node));
                Evidence near = evidence.get(f <= FINER / 2 ? node : node + 1);
                points.add(new Point(
                        size,
                        f <= FINER / 2 ? node : node + 1,
                        node,
                        share,
                        near.of(FaultTable.mixed(expected[node], expected[node + 1], share)),
                        near));
            }
        }
        return new Hypothesis(kind, set, List.copyOf(points));
    }

    /** {@return ln of the mean likelihood over the sizes; −infinity where there is none} */
    double logEvidence() {
        double most = mostLikely();
        double sum = 0;
        for (Point point : points) {
            sum += Math.exp(point.said().logLikelihood() - most);
        }
        return points.isEmpty() ? Double.NEGATIVE_INFINITY : most + Math.log(sum / points.size());
    }

    private double mostLikely() {
        return points.stream()
                .mapToDouble(point -> point.said().logLikelihood())
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** {@return the size that suits best} */
    Point best() {
        Point best = points.get(0);
        for (Point point : points) {
            best = point.said().logLikelihood() > best.said().logLikelihood() ? point : best;
        }
        return best;
    }

    /** {@return weight of each size, in sum one} */
    double[] weights() {
        double most = mostLikely();
        double[] weights = points.stream()
                .mapToDouble(point -> Math.exp(point.said().logLikelihood() - most))
                .toArray();
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    /** Reads a fault's values from the table: those of the sound plant on sets that have it not. */
    static final class Reader {
        /** Of what is read with part of the bridge broken: the tolerances of such a plant are taken from the sound one. */
        private static final double BROKEN = 0.01;

        private final FaultTable table;
        private final FaultKind kind;
        private final int set;

        Reader(FaultTable table, FaultKind kind, int set) {
            this.table = table;
            this.kind = kind;
            this.set = set;
        }

        int nodes() {
            return table.row(kind, Math.max(0, set)).sizes().length;
        }

        double size(int node) {
            return table.row(kind, Math.max(0, set)).sizes()[node];
        }

        boolean isOwnBore(int node) {
            double own = table.expectations().sets().get(set).bores().get(0);
            return Math.abs(size(node) / own - 1) < 1e-9;
        }

        private boolean has(Channel channel) {
            if (set < 0) {
                return true;
            }
            var sets = table.expectations().sets();
            int there = table.expectations().place(channel);
            return channel.state() != LoadState.SHUT
                    && sets.get(there)
                            .bores()
                            .get(0)
                            .equals(sets.get(set).bores().get(0));
        }

        private FaultTable.Row row(Channel channel) {
            return table.row(
                    has(channel) ? kind : FaultKind.NOTHING,
                    table.expectations().place(channel));
        }

        private int node(Channel channel, int node) {
            return has(channel) ? node : 0;
        }

        /** What is not told under the fault is taken as under none, and as good as unknown. */
        double value(Channel channel, int node) {
            double value = row(channel).values()[node(channel, node)][channel.slot()];
            return Double.isFinite(value) ? value : table.expectations().value(channel);
        }

        double value(Channel channel, Point point) {
            double below = value(channel, point.from());
            return point.share() == 0 ? below : below + point.share() * (value(channel, point.from() + 1) - below);
        }

        double model(Channel channel, int node) {
            double value = row(channel).values()[node(channel, node)][channel.slot()];
            if (!Double.isFinite(value)) {
                return Math.abs(table.expectations().value(channel));
            }
            double model = Expectations.modelUncertainty(channel, value);
            return FaultTable.stepped(kind) && channel.state() == LoadState.BUS
                    ? Math.hypot(model, BROKEN * value)
                    : model;
        }

        double[] moved(Channel channel, int node) {
            double[][] all = row(channel).moved()[node(channel, node)];
            double[] moved = new double[all.length];
            for (int b = 0; b < all.length; b++) {
                double one = all[b][channel.slot()];
                moved[b] = Double.isFinite(one) ? one : 0;
            }
            return moved;
        }
    }
}
