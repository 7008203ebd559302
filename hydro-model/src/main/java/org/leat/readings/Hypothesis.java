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
     */
    record Point(double size, int node, int from, double share, boolean shows, Evidence.Said said) {}

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

        /** {@return by how much a fault moves the readings} */
        Evidence.Part moved(double[] there) {
            double[] moved = new double[values.length];
            for (int i = 0; i < moved.length; i++) {
                moved[i] = there[i] - values[i];
            }
            return evidence.part(moved);
        }

        /** With nothing read, nothing is left out. */
        boolean shows(double squares) {
            return values.length == 0 || squares >= SHOWS * SHOWS;
        }

        boolean shows(double[] there) {
            Evidence.Part moved = moved(there);
            return shows(moved.times(moved));
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
        List<Point> points = new ArrayList<>();
        List<Solved> solved = new ArrayList<>();
        for (int node = 0; node < nodes; node++) {
            solved.add(Solved.of(read, node, sound));
        }
        for (int node = 0; node < nodes; node++) {
            Solved here = solved.get(node);
            if (kind != FaultKind.NOZZLE_OTHER || !reader.isOwnBore(node)) {
                Evidence.Part own = here.evidence().against(here.expected());
                boolean shows = sound.shows(here.moved().times(here.moved()));
                points.add(new Point(
                        reader.size(node), node, node, 0, shows, here.evidence().between(own, own, 0)));
            }
            if (kind.sized() && node + 1 < nodes) {
                between(points, reader, node, here, solved.get(node + 1), sound);
            }
        }
        return new Hypothesis(kind, set, List.copyOf(points));
    }

    /** A size that was solved. */
    @SuppressWarnings("ArrayRecordComponent") // numbers that are only read
    private record Solved(double[] expected, Evidence evidence, Evidence.Part moved) {
        static Solved of(Read read, int node, Sound sound) {
            double[] expected = read.values(node);
            return new Solved(expected, read.evidence(node), sound.moved(expected));
        }
    }

    /** Sizes between two that were solved, the readings straight between theirs, the uncertainties those of the nearer. */
    private static void between(
            List<Point> points, FaultReader reader, int node, Solved here, Solved next, Sound sound) {
        double low = reader.size(node);
        double high = reader.size(node + 1);
        double fromMoved = here.moved().times(here.moved());
        double bothMoved = here.moved().times(next.moved());
        double toMoved = next.moved().times(next.moved());
        Evidence evidence = here.evidence();
        Evidence.Part from = evidence.against(here.expected());
        Evidence.Part to = evidence.against(next.expected());
        for (int f = 1; f < FINER; f++) {
            if (f == FINER / 2 + 1) {
                evidence = next.evidence();
                from = evidence.against(here.expected());
                to = evidence.against(next.expected());
            }
            double size = low * Math.pow(high / low, (double) f / FINER);
            double share = (size - low) / (high - low);
            boolean shows = sound.shows(Evidence.squares(fromMoved, bothMoved, toMoved, share));
            points.add(new Point(
                    size, f <= FINER / 2 ? node : node + 1, node, share, shows, evidence.between(from, to, share)));
        }
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
