package org.leat.choice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The search by itself: against published exact fronts, and against looking at every set. */
class FrontSearchTest {

    private static FrontSearch.SearchExtent extent(int threads) {
        return new FrontSearch.SearchExtent(threads, Integer.MAX_VALUE, Long.MAX_VALUE, counts -> true);
    }

    private static JsonNode published() {
        try (InputStream in = FrontSearchTest.class.getResourceAsStream("exact-fronts.json")) {
            return new ObjectMapper().readTree(Objects.requireNonNull(in));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stream<JsonNode> fronts() {
        return published().path("fronts").valueStream();
    }

    static Stream<JsonNode> knapsacks() {
        return published().path("knapsacks").valueStream();
    }

    private static List<Integer> numbers(JsonNode list) {
        return list.valueStream().map(JsonNode::intValue).toList();
    }

    /** {@code 2KP50-11}, {@code -50} and {@code -92} of vOptLib; see the source in the file. */
    @ParameterizedTest
    @MethodSource("fronts")
    void the_front_of_a_two_objective_knapsack_is_the_published_one(JsonNode of) {
        Knapsack knapsack = new Knapsack(
                numbers(of.path("first")),
                numbers(of.path("second")),
                numbers(of.path("weight")),
                of.path("capacity").intValue());
        FrontSearch.Front front = new FrontSearch(knapsack, 1).search(extent(1));
        assertThat(front.end()).isEqualTo(FrontSearch.SearchEnd.WHOLE);
        assertThat(front.points().stream()
                        .map(p -> List.of((int) knapsack.firstOf(p.cost()), (int) p.gain()))
                        .collect(Collectors.toSet()))
                .isEqualTo(of.path("front")
                        .valueStream()
                        .map(FrontSearchTest::numbers)
                        .collect(Collectors.toSet()));
        assertThat(front.points()).hasSameSizeAs(of.path("front"));
    }

    /** Knapsacks P01 to P08 of Burkardt's data sets: one objective, so that the front is one point. */
    @ParameterizedTest
    @MethodSource("knapsacks")
    void the_best_of_a_plain_knapsack_is_the_published_one(JsonNode of) {
        List<Integer> profits = numbers(of.path("profit"));
        List<Integer> nothing = profits.stream().map(p -> 0).toList();
        Knapsack knapsack = new Knapsack(
                profits,
                nothing,
                numbers(of.path("weight")),
                of.path("capacity").intValue());
        FrontSearch.Front front = new FrontSearch(knapsack, 1).search(extent(1));
        assertThat(front.points()).hasSize(1);
        assertThat(knapsack.firstOf(front.points().get(0).cost()))
                .isEqualTo(of.path("best").longValue());
    }

    /** Costs by option, gains and faults drawn for each set, with equal ones among them. */
    private static final class Drawn implements SelectionProblem {

        private final int[] options;
        private final long[][] costs;
        private final double[] gains;
        private final int[] faults;
        private final double slack;
        private final List<int[]> all;
        private final Map<String, Double> mostAfter = new HashMap<>();

        Drawn(long seed) {
            Random random = new Random(seed);
            options = random.ints(2 + random.nextInt(4), 1, 6).toArray();
            costs = new long[options.length][];
            for (int c = 0; c < options.length; c++) {
                costs[c] = random.longs(options[c], 0, 3 + random.nextInt(40)).toArray();
            }
            int sets = Arrays.stream(options).reduce(1, (a, b) -> a * b);
            int levels = 3 + random.nextInt(300);
            int worst = random.nextInt(6);
            double banned = random.nextDouble();
            gains = random.doubles(sets)
                    .map(d -> d < 0.05 ? Double.NaN : Math.floor(d * levels))
                    .toArray();
            faults = random.ints(sets, 0, 1 + worst)
                    .map(f -> random.nextDouble() < banned ? FORBIDDEN : f)
                    .toArray();
            slack = random.nextBoolean() ? 0 : random.nextInt(50);
            all = product(options);
            for (int[] set : all) {
                for (int known = 0; known <= set.length && !Double.isNaN(gains[index(set)]); known++) {
                    mostAfter.merge(beginning(set, known), gains[index(set)], Math::max);
                }
            }
        }

        int index(int[] set) {
            int index = 0;
            for (int c = 0; c < options.length; c++) {
                index = index * options[c] + set[c];
            }
            return index;
        }

        List<int[]> sets() {
            return all;
        }

        private static List<int[]> product(int[] options) {
            List<int[]> all = new ArrayList<>(List.of(new int[options.length]));
            for (int c = 0; c < options.length; c++) {
                List<int[]> more = new ArrayList<>();
                for (int[] begun : all) {
                    for (int o = 0; o < options[c]; o++) {
                        int[] set = begun.clone();
                        set[c] = o;
                        more.add(set);
                    }
                }
                all = more;
            }
            return all;
        }

        @Override
        public int[] options() {
            return options;
        }

        @Override
        public long cost(int[] set) {
            long cost = 0;
            for (int c = 0; c < options.length; c++) {
                cost += costs[c][set[c]];
            }
            return cost;
        }

        @Override
        public long leastCost(int[] set, int known, double gain) {
            if (!(mostGain(set, known) > gain)) {
                return NONE;
            }
            long cost = 0;
            for (int c = 0; c < options.length; c++) {
                cost += c < known
                        ? costs[c][set[c]]
                        : Arrays.stream(costs[c]).min().orElseThrow();
            }
            return cost;
        }

        @Override
        public double mostGain(int[] set, int known) {
            return slack + mostAfter.getOrDefault(beginning(set, known), Double.NEGATIVE_INFINITY);
        }

        private static String beginning(int[] set, int known) {
            return Arrays.toString(Arrays.copyOf(set, known));
        }

        @Override
        public double gain(int[] set) {
            return gains[index(set)];
        }

        @Override
        public int check(int[] set) {
            return faults[index(set)];
        }

        /** The front of three aims by looking at every set and comparing each with each. */
        Set<List<Double>> byLookingAtAll(int most) {
            List<double[]> all = sets().stream()
                    .filter(s -> faults[index(s)] != FORBIDDEN && faults[index(s)] <= most)
                    .filter(s -> !Double.isNaN(gains[index(s)]))
                    .map(s -> new double[] {cost(s), -gains[index(s)], faults[index(s)]})
                    .toList();
            return all.stream()
                    .filter(p -> all.stream()
                            .noneMatch(q -> q[0] <= p[0]
                                    && q[1] <= p[1]
                                    && q[2] <= p[2]
                                    && (q[0] < p[0] || q[1] < p[1] || q[2] < p[2])))
                    .map(p -> List.of(p[0], 0 - p[1], p[2]))
                    .collect(Collectors.toSet());
        }
    }

    private static List<List<Double>> points(FrontSearch.Front front) {
        return front.points().stream()
                .map(p -> List.of((double) p.cost(), p.gain(), (double) p.faults()))
                .toList();
    }

    @Test
    void the_front_is_that_of_looking_at_every_set_whatever_the_portions_and_threads() {
        int sets = 0;
        for (long seed = 0; seed < 400; seed++) {
            Drawn drawn = new Drawn(seed);
            sets += drawn.sets().size();
            int most = seed % 5 == 0 ? (int) (seed % 3) : Integer.MAX_VALUE;
            FrontSearch.Front one = new FrontSearch(drawn, 1 + (int) (seed % 40))
                    .search(new FrontSearch.SearchExtent(1, most, Long.MAX_VALUE, counts -> true));
            FrontSearch.Front more = new FrontSearch(drawn, 1 + (int) (seed % 40))
                    .search(new FrontSearch.SearchExtent(1 + (int) (seed % 4), most, Long.MAX_VALUE, counts -> true));
            assertThat(points(one)).as("seed " + seed).doesNotHaveDuplicates();
            assertThat(Set.copyOf(points(one))).as("seed " + seed).isEqualTo(drawn.byLookingAtAll(most));
            assertThat(one.end()).isEqualTo(FrontSearch.SearchEnd.WHOLE);
            assertThat(more).as("seed " + seed).isEqualTo(one);
        }
        assertThat(sets).isGreaterThan(20_000);
    }

    @Test
    void what_is_not_checked_costs_no_less_and_gains_no_more_than_a_set_kept() {
        for (long seed = 0; seed < 60; seed++) {
            Drawn drawn = new Drawn(seed);
            List<String> checked = Collections.synchronizedList(new ArrayList<>());
            SelectionProblem watched = new Watched(drawn, checked);
            FrontSearch.Front front = new FrontSearch(watched, 7)
                    .search(new FrontSearch.SearchExtent(2, Integer.MAX_VALUE, 0, counts -> true));
            assertThat(front.counts().checked()).isEqualTo(checked.size());
            assertThat(checked).doesNotHaveDuplicates();
            for (int[] set : drawn.sets()) {
                double gain = drawn.gain(set);
                if (!checked.contains(Arrays.toString(set)) && !Double.isNaN(gain)) {
                    assertThat(front.points())
                            .as("seed " + seed + " " + Arrays.toString(set))
                            .anyMatch(kept -> kept.cost() <= drawn.cost(set) && kept.gain() >= gain);
                }
            }
        }
    }

    /** Notes what is checked. */
    private record Watched(SelectionProblem of, List<String> checked) implements SelectionProblem {
        @Override
        public int[] options() {
            return of.options();
        }

        @Override
        public long cost(int[] set) {
            return of.cost(set);
        }

        @Override
        public long leastCost(int[] set, int known, double gain) {
            return of.leastCost(set, known, gain);
        }

        @Override
        public double mostGain(int[] set, int known) {
            return of.mostGain(set, known);
        }

        @Override
        public double gain(int[] set) {
            return of.gain(set);
        }

        @Override
        public int check(int[] set) {
            checked.add(Arrays.toString(set));
            return of.check(set);
        }
    }

    @Test
    void a_search_that_is_stopped_tells_what_is_settled_and_what_could_still_be() {
        int stopped = 0;
        for (long seed = 0; seed < 100; seed++) {
            Drawn drawn = new Drawn(seed);
            AtomicInteger portions = new AtomicInteger();
            FrontSearch.Front front = new FrontSearch(drawn, 3)
                    .search(new FrontSearch.SearchExtent(
                            2, Integer.MAX_VALUE, 0, counts -> portions.incrementAndGet() < 4));
            if (front.end() == FrontSearch.SearchEnd.STOPPED) {
                stopped++;
                assertThat(front.fewer()).isEmpty();
                List<FrontSearch.FrontPoint> whole = new FrontSearch(drawn, 3)
                        .search(new FrontSearch.SearchExtent(1, Integer.MAX_VALUE, 0, counts -> true))
                        .points();
                assertThat(front.points().stream().filter(p -> p.cost() < front.reached()))
                        .as("seed " + seed)
                        .containsExactlyElementsOf(whole.stream()
                                .filter(p -> p.cost() < front.reached())
                                .toList());
                assertThat(whole)
                        .as("seed " + seed)
                        .allMatch(p -> front.points().contains(p)
                                || p.gain() <= front.possible().orElseThrow());
            }
        }
        assertThat(stopped).isGreaterThan(30);
    }
}
