package org.leat.season;

import java.util.ArrayList;
import java.util.List;

/**
 * Rainflow counting of a series, three-point method: what goes up and down within a larger swing is a cycle, what is left from
 * the start counts as half cycles. Points that are no reversals are left out first; of equal neighbours one counts.
 *
 * <p>Two conventions: {@link #ofOnce} keeps the half cycles of the standard; {@link #ofRepeating} takes a history that returns to
 * its start, as a year does, from its greatest value on, so that all cycles are whole. They differ.
 *
 * <p>Source: ASTM E1049-85, 5.4.4 (once) and 5.4.5 (repeating), as held in the test suites of general libraries.
 */
final class Rainflow {

    private Rainflow() {}

    /**
     * A cycle that was counted.
     *
     * @param range greatest less least, in the unit of the series
     * @param mean of the two
     * @param count 1, or 0.5 for half a cycle
     */
    record Cycle(double range, double mean, double count) {}

    /** {@return the cycles of a series that happens once, those that close first, then the half cycles in order of time} */
    static List<Cycle> ofOnce(double[] series) {
        List<Cycle> cycles = new ArrayList<>();
        List<Double> left = closed(reversals(series), true, cycles);
        for (int i = 0; i + 1 < left.size(); i++) {
            cycles.add(cycle(left.get(i), left.get(i + 1), 0.5));
        }
        return List.copyOf(cycles);
    }

    /** {@return the whole cycles of a series that begins again when it ends} */
    static List<Cycle> ofRepeating(double[] series) {
        int greatest = 0;
        for (int i = 1; i < series.length; i++) {
            greatest = series[i] > series[greatest] ? i : greatest;
        }
        double[] turned = new double[series.length + 1];
        for (int i = 0; i < turned.length && series.length > 0; i++) {
            turned[i] = series[(greatest + i) % series.length];
        }
        List<Cycle> cycles = new ArrayList<>();
        closed(reversals(turned), false, cycles);
        return List.copyOf(cycles);
    }

    /**
     * {@return the turning points that no cycle closes}
     *
     * @param once whether a range that holds the first point is half a cycle: it was never begun
     * @param cycles takes those that close
     */
    private static List<Double> closed(double[] points, boolean once, List<Cycle> cycles) {
        List<Double> left = new ArrayList<>();
        for (double point : points) {
            left.add(point);
            while (left.size() >= 3) {
                int last = left.size() - 1;
                double x = Math.abs(left.get(last) - left.get(last - 1));
                double y = Math.abs(left.get(last - 1) - left.get(last - 2));
                if (x < y) {
                    break;
                }
                if (once && last == 2) {
                    cycles.add(cycle(left.get(0), left.get(1), 0.5));
                    left.remove(0);
                } else {
                    cycles.add(cycle(left.get(last - 2), left.get(last - 1), 1));
                    left.remove(last - 1);
                    left.remove(last - 2);
                }
            }
        }
        return left;
    }

    /** {@return the turning points of a series, its first and last value among them} */
    static double[] reversals(double[] series) {
        List<Double> points = new ArrayList<>();
        for (double value : series) {
            int last = points.size() - 1;
            if (last >= 0 && points.get(last) == value) {
                continue;
            }
            if (last >= 1 && (points.get(last) - points.get(last - 1)) * (value - points.get(last)) > 0) {
                points.set(last, value);
            } else {
                points.add(value);
            }
        }
        return points.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Cycle cycle(double from, double to, double count) {
        return new Cycle(Math.abs(to - from), (from + to) / 2, count);
    }
}
