package org.leat.page;

import java.util.List;
import java.util.stream.IntStream;

/** Moves labels apart that would stand on each other, as little as will do. */
final class LabelSpacing {

    private LabelSpacing() {}

    /**
     * {@return where each label goes}
     *
     * @param wanted where each would like to be, in any order
     * @param gap between two at least
     * @param low none goes before this, unless there is no room
     * @param high none goes beyond this
     */
    static double[] of(double[] wanted, double gap, double low, double high) {
        List<Integer> order = IntStream.range(0, wanted.length)
                .boxed()
                .sorted((a, b) -> Double.compare(wanted[a], wanted[b]))
                .toList();
        double[] placed = new double[wanted.length];
        double least = low;
        for (int i : order) {
            placed[i] = Math.max(wanted[i], least);
            least = placed[i] + gap;
        }
        double most = high;
        for (int n = order.size() - 1; n >= 0; n--) {
            int i = order.get(n);
            placed[i] = Math.min(placed[i], most);
            most = placed[i] - gap;
        }
        return placed;
    }
}
