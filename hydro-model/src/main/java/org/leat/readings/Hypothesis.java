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

    /** Standard uncertainties of all readings together by which a fault must move them to be one that they would show. */
    private static final double SHOWS = 3;

    /**
     * One size.
     *
     * @param size of the fault
     * @param node the solved size next to it, whose uncertainties are taken
     * @param from the solved size below it
     * @param share of the way to the next solved size
     * @param shows whether it moves these readings so far that they would show it
     * @param said by the readings
     * @param evidence of that node
     */
    record Point(double size, int node, int from, double share, boolean shows, Evidence.Said said, Evidence evidence) {}

    /**
     * What a sound plant lets one read, against which it is told whether a fault shows.
     *
     * @param values one for each reading
     * @param evidence of the sound plant
     */
    @SuppressWarnings("ArrayRecordComponent") // numbers that are only read
    record Sound(double[] values, Evidence evidence) {

        static Sound of(FaultTable table, List<Observation> readings) {
            Read read = Read.of(table, FaultKind.NOTHING, -1, readings);
            return new Sound(read.values(0), read.evidence(0));
        }

        /** With nothing read, nothing is left out. */
        boolean shows(double[] there) {
            double[] moved = new double[values.length];
            for (int i = 0; i < moved.length; i++) {
                moved[i] = there[i] - values[i];
            }
            return values.length == 0 || evidence.squares(moved) >= SHOWS * SHOWS;
        }
    }

    /** {@return the hypotheses of a fault} One for each set where it can be in one nozzle alone. */
    static List<Hypothesis> all(FaultTable table, FaultKind kind, List<Observation> readings, Sound sound) {
        if (!kind.ofOneNozzle()) {
            return List.of(of(table, kind, -1, readings, sound));
        }
        List<Hypothesis> all = new ArrayList<>();
        for (int set = 0; set < table.expectations().sets().size(); set++) {
            String name = table.expectations().sets().get(set).name();
            if (readings.stream().anyMatch(r -> r.channel().nozzles().equals(name))) {
                all.add(of(table, kind, set, readings, sound));
            }
        }
        return all;
    }

    /** The readings as a fault lets one expect them. */
    private record Read(List<Observation> readings, FaultReader reader, List<FaultReader.At> places) {

        static Read of(FaultTable table, FaultKind kind, int set, List<Observation> readings) {
            FaultReader reader = new FaultReader(table, kind, set);
            return new Read(
                    readings,
                    reader,
                    readings.stream().map(r -> reader.at(r.channel())).toList());
        }

        double[] values(int node) {
            return places.stream().mapToDouble(at -> at.value(node)).toArray();
        }

        Evidence evidence(int node) {
            double[] model = new double[readings.size()];
            double[][] moved = new double[readings.size()][];
            for (int i = 0; i < model.length; i++) {
                model[i] = places.get(i).model(node);
                moved[i] = places.get(i).moved(node);
            }
            return new Evidence(readings, model, moved);
        }
    }

    private static Hypothesis of(FaultTable table, FaultKind kind, int set, List<Observation> readings, Sound sound) {
        Read read = Read.of(table, kind, set, readings);
        FaultReader reader = read.reader();
        int nodes = reader.nodes();
        List<Evidence> evidence = new ArrayList<>();
        double[][] expected = new double[nodes][];
        for (int node = 0; node < nodes; node++) {
            expected[node] = read.values(node);
            evidence.add(read.evidence(node));
        }
        List<Point> points = new ArrayList<>();
        for (int node = 0; node < nodes; node++) {
            if (kind == FaultKind.NOZZLE_OTHER && reader.isOwnBore(node)) {
                continue;
            }
            points.add(point(reader.size(node), node, node, 0, expected[node], evidence.get(node), sound));
            for (int f = 1; kind.sized() && node + 1 < nodes && f < FINER; f++) {
                double size =
                        reader.size(node) * Math.pow(reader.size(node + 1) / reader.size(node), (double) f / FINER);
                double share = (size - reader.size(node)) / (reader.size(node + 1) - reader.size(node));
                int near = f <= FINER / 2 ? node : node + 1;
                double[] between = FaultTable.mixed(expected[node], expected[node + 1], share);
                points.add(point(size, near, node, share, between, evidence.get(near), sound));
            }
        }
        return new Hypothesis(kind, set, List.copyOf(points));
    }

    private static Point point(
            double size, int node, int from, double share, double[] there, Evidence evidence, Sound sound) {
        return new Point(size, node, from, share, sound.shows(there), evidence.of(there), evidence);
    }

    /** {@return ln of the likelihood at all sizes, each as likely as any other; −infinity where there is none} */
    double logEvidence() {
        return logEvidence(points);
    }

    /** {@return ln of the part of it that comes from sizes which the readings would show} */
    double logEvidenceShown() {
        return logEvidence(points.stream().filter(Point::shows).toList());
    }

    private double logEvidence(List<Point> some) {
        double most = mostLikely();
        double sum = 0;
        for (Point point : some) {
            sum += Math.exp(point.said().logLikelihood() - most);
        }
        return some.isEmpty() ? Double.NEGATIVE_INFINITY : most + Math.log(sum / points.size());
    }

    /** {@return whether the readings would show it at any of its sizes} */
    boolean shows() {
        return points.stream().anyMatch(Point::shows);
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
}
