package org.leat.readings;

import java.util.List;

/** The size of a fault, with how far each tolerance of building is off, by least squares from the best of the sizes looked at. */
final class FaultSize {

    /** ln of the widest factor told: beyond it the sizes looked at tell more. */
    private static final double WIDEST = 0.3;

    private final Hypothesis one;
    private final List<Observation> readings;
    private final FaultReader reader;

    FaultSize(FaultTable table, Hypothesis one, List<Observation> readings) {
        this.one = one;
        this.readings = readings;
        this.reader = new FaultReader(table, one.kind(), one.set());
    }

    /**
     * A size.
     *
     * @param size that suits best
     * @param factor by which it may be off either way, 95 %; one where the fit came to nothing
     */
    record Size(double size, double factor) {}

    /** {@return the size; the best of those looked at where the fit comes to nothing} */
    Size fitted() {
        Hypothesis.Point best = one.best();
        Size looked = new Size(best.size(), 1);
        if (readings.isEmpty()) {
            return looked;
        }
        int tolerances = best.said().tolerances().length;
        double[] start = new double[1 + tolerances];
        start[0] = Math.log(best.size());
        System.arraycopy(best.said().tolerances(), 0, start, 1, tolerances);
        FaultReader.At[] places = new FaultReader.At[readings.size()];
        double[][] moved = new double[readings.size()][];
        double[] standard = new double[readings.size()];
        for (int i = 0; i < standard.length; i++) {
            Channel channel = readings.get(i).channel();
            places[i] = reader.at(channel);
            moved[i] = places[i].moved(best.node());
            standard[i] = Math.hypot(readings.get(i).standard(), places[i].model(best.node()));
        }
        double[] read = new double[readings.size() + tolerances];
        for (int i = 0; i < standard.length; i++) {
            read[i] = readings.get(i).value() / standard[i];
        }
        LeastSquaresFit.Law law = p -> {
            double[] values = new double[read.length];
            for (int i = 0; i < standard.length; i++) {
                double value = at(places[i], Math.exp(p[0]));
                for (int b = 0; b < tolerances; b++) {
                    value += moved[i][b] * p[1 + b];
                }
                values[i] = value / standard[i];
            }
            System.arraycopy(p, 1, values, standard.length, tolerances);
            return values;
        };
        if (LeastSquaresFit.of(law, read, start) instanceof LeastSquaresFit.Fitted fit) {
            double size = Math.exp(fit.parameters()[0]);
            double factor = Math.exp(Math.min(WIDEST, 2 * fit.weighted()[0]));
            boolean within =
                    size >= one.kind().least() / 2 && size <= 2 * one.kind().most();
            return within && Double.isFinite(factor) ? new Size(size, factor) : looked;
        }
        return looked;
    }

    /** Straight between the sizes that were solved, and on beyond them. */
    private double at(FaultReader.At place, double size) {
        int from = 0;
        while (from + 2 < reader.nodes() && reader.size(from + 1) < size) {
            from++;
        }
        double share = (size - reader.size(from)) / (reader.size(from + 1) - reader.size(from));
        double below = place.value(from);
        return below + share * (place.value(from + 1) - below);
    }
}
