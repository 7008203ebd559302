package org.leat.route;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * A line of many points drawn with few: between two points that are kept, none lies farther from the straight line than a tolerance.
 * The farthest point is kept and each half looked at again; where first and last are one point, distance is that to the point.
 *
 * <p>Source: D. H. Douglas, T. K. Peucker, Algorithms for the reduction of the number of points required to represent a digitized
 * line, The Canadian Cartographer 10 (1973) 112.
 */
final class DouglasPeucker {

    private DouglasPeucker() {}

    /**
     * {@return the points kept, rising; first and last among them}
     *
     * @param x of each point; two at least
     * @param y of each point, in the unit of {@code x}
     * @param tolerance a point no farther than this is left out; not negative
     */
    static List<Integer> kept(double[] x, double[] y, double tolerance) {
        if (x.length < 2 || x.length != y.length || !(tolerance >= 0)) {
            throw new IllegalArgumentException("two points at least, and a tolerance that is not negative");
        }
        boolean[] keep = new boolean[x.length];
        keep[0] = true;
        keep[x.length - 1] = true;
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, x.length - 1});
        while (!open.isEmpty()) {
            int[] part = open.pop();
            int farthest = -1;
            double most = tolerance;
            for (int i = part[0] + 1; i < part[1]; i++) {
                double distance = distance(x, y, part[0], part[1], i);
                if (distance > most) {
                    most = distance;
                    farthest = i;
                }
            }
            if (farthest > 0) {
                keep[farthest] = true;
                open.push(new int[] {part[0], farthest});
                open.push(new int[] {farthest, part[1]});
            }
        }
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < keep.length; i++) {
            if (keep[i]) {
                kept.add(i);
            }
        }
        return kept;
    }

    private static double distance(double[] x, double[] y, int from, int to, int point) {
        double dx = x[to] - x[from];
        double dy = y[to] - y[from];
        double px = x[point] - x[from];
        double py = y[point] - y[from];
        double length = Math.hypot(dx, dy);
        return length == 0 ? Math.hypot(px, py) : Math.abs(dx * py - dy * px) / length;
    }
}
