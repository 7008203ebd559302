package org.leat.choice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A 0-1 knapsack of one or two objectives, both to be made great: the first is the cost, turned round, the second the gain. Bounds
 * are those of Dantzig (fractional knapsack) for several weighted sums of both objectives.
 */
final class Knapsack implements SelectionProblem {

    private static final double[] WEIGHTS = {0, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.85, 1, 1.2, 1.5, 2, 3, 5, 10, 30};

    private final int[] first;
    private final int[] second;
    private final int[] weight;
    private final int capacity;
    private final long all;

    /** For each weighted sum: items by what they bring for their weight. */
    private final int[][] orders;

    Knapsack(List<Integer> first, List<Integer> second, List<Integer> weight, int capacity) {
        int n = weight.size();
        // items that bring most for their weight are decided first
        Integer[] order = IntStream.range(0, n).boxed().toArray(Integer[]::new);
        Arrays.sort(
                order,
                Comparator.comparingDouble((Integer i) -> -(double) (first.get(i) + second.get(i)) / weight.get(i)));
        this.first = Arrays.stream(order).mapToInt(first::get).toArray();
        this.second = Arrays.stream(order).mapToInt(second::get).toArray();
        this.weight = Arrays.stream(order).mapToInt(weight::get).toArray();
        this.capacity = capacity;
        this.all = Arrays.stream(this.first).asLongStream().sum();
        this.orders = new int[WEIGHTS.length + 1][];
        for (int k = 0; k <= WEIGHTS.length; k++) {
            int of = k;
            orders[k] = IntStream.range(0, n)
                    .boxed()
                    .sorted(Comparator.comparingDouble(i -> -profit(of, i) / this.weight[i]))
                    .mapToInt(i -> i)
                    .toArray();
        }
    }

    /** The last weighted sum is the second objective alone. */
    private double profit(int sum, int item) {
        return sum == WEIGHTS.length ? second[item] : first[item] + WEIGHTS[sum] * second[item];
    }

    long firstOf(long cost) {
        return all - cost;
    }

    @Override
    public int[] options() {
        int[] options = new int[weight.length];
        Arrays.fill(options, 2);
        return options;
    }

    @Override
    public long cost(int[] set) {
        return all - sum(first, set, set.length);
    }

    @Override
    public double gain(int[] set) {
        return sum(second, set, set.length);
    }

    @Override
    public int check(int[] set) {
        return 0;
    }

    private static long sum(int[] of, int[] set, int known) {
        long sum = 0;
        for (int i = 0; i < known; i++) {
            sum += (long) of[i] * set[i];
        }
        return sum;
    }

    private double most(int sum, int known, long room) {
        double most = 0;
        long left = room;
        for (int item : orders[sum]) {
            if (item >= known) {
                if (weight[item] > left) {
                    return most + profit(sum, item) * left / weight[item];
                }
                left -= weight[item];
                most += profit(sum, item);
            }
        }
        return most;
    }

    @Override
    public double mostGain(int[] set, int known) {
        return sum(second, set, known) + Math.floor(most(WEIGHTS.length, known, room(set, known)) + 1e-9);
    }

    private long room(int[] set, int known) {
        return capacity - sum(weight, set, known);
    }

    @Override
    public long leastCost(int[] set, int known, double gain) {
        long room = room(set, known);
        if (room < 0 || !(mostGain(set, known) > gain)) {
            return NONE;
        }
        long had = sum(first, set, known);
        double needed = gain == Double.NEGATIVE_INFINITY ? 0 : gain + 1 - sum(second, set, known);
        double most = Double.POSITIVE_INFINITY;
        for (int k = 0; k < WEIGHTS.length; k++) {
            most = Math.min(most, most(k, known, room) - WEIGHTS[k] * needed);
        }
        return most < -1e-9 ? NONE : all - had - (long) Math.floor(most + 1e-9);
    }
}
