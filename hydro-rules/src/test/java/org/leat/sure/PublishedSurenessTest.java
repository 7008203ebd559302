package org.leat.sure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.ExponentialDistribution;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The laws behind a probability of failing against published values; the source is named beside each. Where a value is called
 * recomputed, the published one is a sample value, and the exact one was computed apart from this project.
 */
class PublishedSurenessTest {

    private static final int MANY = 1 << 15;

    private static RealDistribution normal(double mean, double sd) {
        return new NormalDistribution(null, mean, sd);
    }

    private static RealDistribution uniform(double low, double high) {
        return new UniformRealDistribution(null, low, high);
    }

    /** Slopes at the means, by a thousandth of the uncertainty either way. */
    private static List<FirstOrder.Slope> slopes(ToDoubleFunction<double[]> model, double[] at, double[] u) {
        List<FirstOrder.Slope> slopes = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            double[] low = at.clone();
            double[] high = at.clone();
            low[i] -= u[i] / 1000;
            high[i] += u[i] / 1000;
            slopes.add(FirstOrder.slope(
                    new FirstOrder.At(low[i], model.applyAsDouble(low)),
                    new FirstOrder.At(at[i], model.applyAsDouble(at)),
                    new FirstOrder.At(high[i], model.applyAsDouble(high)),
                    u[i]));
        }
        return slopes;
    }

    private static double firstOrder(ToDoubleFunction<double[]> model, double[] at, double[] u) {
        return FirstOrder.uncertainty(slopes(model, at, u));
    }

    private static double[] sampled(ToDoubleFunction<double[]> model, int count, RealDistribution... inputs) {
        return SobolPoints.of(inputs.length, count).stream()
                .mapToDouble(point -> {
                    double[] x = new double[point.length];
                    for (int i = 0; i < x.length; i++) {
                        x[i] = inputs[i].inverseCumulativeProbability(point[i]);
                    }
                    return model.applyAsDouble(x);
                })
                .toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double deviation(double[] values) {
        double mean = mean(values);
        return Math.sqrt(Arrays.stream(values)
                .map(v -> (v - mean) * (v - mean))
                .average()
                .orElseThrow());
    }

    /** Shortest interval that holds 95 % of the values. */
    private static double[] shortest(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int held = (int) Math.round(0.95 * sorted.length);
        int best = 0;
        for (int i = 0; i + held < sorted.length; i++) {
            best = sorted[i + held] - sorted[i] < sorted[best + held] - sorted[best] ? i : best;
        }
        return new double[] {sorted[best], sorted[best + held]};
    }

    // conformity

    /** JCGM 106:2012, breakdown voltage: −5.47 V, limit −5.40 V, u 0.05 V; conformance probability 0.92 (from memory). */
    @Test
    void a_breakdown_voltage_conforms_with_a_probability_of_0_92() {
        assertThat(1 - FailingProbability.of(-5.47 + 5.40, 0.05)).isCloseTo(0.9192433, within(1e-6));
    }

    /** Test suite of a national laboratory's uncertainty program: N(10.5, 0.4) within 9 to 11, 0.00009 below, 0.10565 above. */
    @Test
    void both_limits_of_an_item_count() {
        assertThat(FailingProbability.of(9 - 10.5, 0.4)).isCloseTo(0.00009, within(1e-5));
        assertThat(FailingProbability.of(10.5 - 11, 0.4)).isCloseTo(0.10565, within(1e-5));
    }

    // reliability

    /** β, P: R − S with N(200, 10), N(100, 20), exact; N(7, 1), N(2, 1) and N(4, 1), N(2, 1): TNO reliability problems. */
    static Stream<double[]> strengthAndLoad() {
        return Stream.of(
                new double[] {200, 10, 100, 20, 4.472136, 3.872108e-6},
                new double[] {7, 1, 2, 1, 3.5355339059, 0.00020347600872},
                new double[] {4, 1, 2, 1, 1.4142135623730951, 0.07864960352514258});
    }

    @ParameterizedTest
    @MethodSource("strengthAndLoad")
    void strength_less_load_fails_as_published(double[] c) {
        double u = firstOrder(x -> x[1] - x[0], new double[] {c[0], c[2]}, new double[] {c[1], c[3]});
        double beyond = c[2] - c[0];
        assertThat(-beyond / u).isCloseTo(c[4], within(1e-6));
        assertThat(FailingProbability.of(beyond, u)).isCloseTo(c[5], within(c[5] * 1e-6));
    }

    /** TNO reliability problem 107: 5 √10 less a sum of ten standard normals; exactly Φ(−5), the published 2.92e-7 is a sample. */
    @Test
    void a_sum_of_ten_fails_as_rarely_as_five_deviations() {
        double u = firstOrder(x -> Arrays.stream(x).sum(), new double[10], ones(10));
        assertThat(FailingProbability.of(-5 * Math.sqrt(10), u)).isCloseTo(2.866515718791933e-7, within(1e-15));
    }

    private static double[] ones(int count) {
        return IntStream.range(0, count).mapToDouble(i -> 1).toArray();
    }

    private record Reliability(String name, ToDoubleFunction<double[]> g, double failing, RealDistribution... x) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** g below zero is failure; TNO reliability problems as held in a public benchmark library, 4br by Waarts (2000). */
    static Stream<Reliability> curved() {
        RealDistribution[] two = {normal(0, 1), normal(0, 1)};
        RealDistribution[] exponentials = IntStream.range(0, 20)
                .mapToObj(i -> new ExponentialDistribution(null, 1))
                .toArray(RealDistribution[]::new);
        double log = Math.log(1.01);
        return Stream.of(
                new Reliability(
                        "22, first order 48 % too much",
                        x -> 2.5 - (x[0] + x[1]) / Math.sqrt(2) + 0.1 * (x[0] - x[1]) * (x[0] - x[1]),
                        0.004207305511,
                        two),
                new Reliability(
                        "24",
                        x -> 2.5 - 0.2357 * (x[0] - x[1]) + 0.00463 * Math.pow(x[0] + x[1] - 20, 4),
                        0.002861,
                        normal(10, 3),
                        normal(10, 3)),
                new Reliability(
                        "31, first order seven times too much",
                        x -> 2 - x[1] + 256 * Math.pow(x[0], 4),
                        0.00322668120958757,
                        two),
                new Reliability(
                        "33, recomputed",
                        x -> Math.min(-x[0] - x[1] - x[2] + 3 * Math.sqrt(3), -x[2] + 3),
                        0.0025755978,
                        normal(0, 1),
                        normal(0, 1),
                        normal(0, 1)),
                new Reliability(
                        "35",
                        x -> Math.min(
                                2 - x[1] + Math.exp(-0.1 * x[0] * x[0]) + Math.pow(0.2 * x[0], 4), 4.5 - x[0] * x[1]),
                        0.00347895,
                        two),
                new Reliability(
                        "57, recomputed",
                        x -> Math.min(
                                Math.max(-x[0] * x[0] + Math.pow(x[1], 3) + 3, 2 - x[0] - 8 * x[1]),
                                (x[0] + 3) * (x[0] + 3) + (x[1] + 3) * (x[1] + 3) - 4),
                        0.02824,
                        two),
                new Reliability("75, two design points", x -> 3 - x[0] * x[1], 0.00981929872154, two),
                new Reliability(
                        "89, recomputed",
                        x -> Math.min(-x[0] * x[0] - x[1] + 8, -x[0] / 5 - x[1] + 6),
                        0.00547128,
                        two),
                new Reliability(
                        "four branches",
                        x -> {
                            double curved = 3 + 0.1 * (x[0] - x[1]) * (x[0] - x[1]);
                            double along = (x[0] + x[1]) / Math.sqrt(2);
                            double across = x[0] - x[1];
                            return Math.min(
                                    Math.min(curved - along, curved + along),
                                    Math.min(across + 7 / Math.sqrt(2), -across + 7 / Math.sqrt(2)));
                        },
                        0.002222795,
                        two),
                new Reliability(
                        "beam, lognormal by mean and deviation, recomputed",
                        x -> x[0] - x[1] / (100 * Math.PI),
                        0.02919819462,
                        new LogNormalDistribution(null, Math.log(300) - log / 2, Math.sqrt(log)),
                        normal(75000, 5000)),
                new Reliability("54, recomputed", x -> Arrays.stream(x).sum() - 8.951, 0.0009906, exponentials));
    }

    @ParameterizedTest
    @MethodSource("curved")
    void what_is_not_straight_is_sampled_within_three_deviations_of_counting(Reliability c) {
        double[] g = sampled(c.g, MANY, c.x);
        double failing = (double) Arrays.stream(g).filter(v -> v < 0).count() / g.length;
        double counting = Math.sqrt(c.failing * (1 - c.failing) / MANY);
        assertThat(failing).isCloseTo(c.failing, within(3 * counting));
    }

    // uncertainty, first order

    private record Propagated(
            String name, ToDoubleFunction<double[]> model, double[] at, double[] u, double expected, double share) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Propagated> firstOrders() {
        double third = 1 / Math.sqrt(3);
        return Stream.of(
                new Propagated(
                        "four standard normals, JCGM 101:2008, 9.2.2",
                        x -> Arrays.stream(x).sum(),
                        new double[4],
                        ones(4),
                        2,
                        1e-9),
                new Propagated(
                        "mass calibration, JCGM 101:2008, 9.3, to first order (from memory)",
                        PublishedSurenessTest::mass,
                        new double[] {100_000, 1.234, 1.2, 8000, 8000},
                        new double[] {0.05, 0.02, 0.1 * third, 1000 * third, 50 * third},
                        0.0538516,
                        1e-5),
                new Propagated(
                        "end gauge, JCGM 100:2008, H.1",
                        x -> x[0] + x[1] + x[2] + x[3] - 50_000_623 * (x[4] * -0.1 + 1.15e-5 * x[5]),
                        new double[6],
                        new double[] {25, 5.8, 3.9, 6.7, 1e-6 * third, 0.05 * third},
                        31.66,
                        2e-4),
                new Propagated(
                        "calibration standard, EURACHEM/CITAC guide, A1",
                        x -> 1000 * x[0] * x[1] / (100 + x[2] + x[3] + x[4]),
                        new double[] {100.28, 0.9999, 0, 0, 0},
                        new double[] {0.05, 0.0001 * third, 0.1 / Math.sqrt(6), 0.02, 0.084 * third},
                        0.835199,
                        2e-6),
                new Propagated(
                        "thermal expansion, NIST Technical Note 1900",
                        x -> (x[2] - x[0]) / (x[0] * (x[3] - x[1])),
                        new double[] {1.4999, 288.15, 1.5021, 373.10},
                        new double[] {0.0001, 0.02, 0.0002, 0.05},
                        1.7555e-6,
                        1e-4),
                new Propagated(
                        "falling ball viscometer, NIST Technical Note 1900, E3, recomputed",
                        PublishedSurenessTest::viscosity,
                        new double[] {4.63, 61, 36.6, 2217, 1180, 810},
                        new double[] {0.0463, 6.1, 5.49, 0.5, 0.5, 0.5},
                        1.0269,
                        1e-4),
                new Propagated(
                        "a constant from five, over 34 decades, manual of a standards body's calculator, example 10",
                        x -> 32
                                * Math.pow(Math.PI, 5)
                                * x[0]
                                * Math.pow(x[1], 4)
                                * Math.pow(x[2], 4)
                                / (15
                                        * Math.pow(x[3], 4)
                                        * Math.pow(0.001, 4)
                                        * Math.pow(299_792_458, 6)
                                        * Math.pow(x[4], 8)),
                        new double[] {6.62606957e-34, 8.3144621, 10973731.568539, 0.00054857990946, 0.0072973525698},
                        new double[] {2.9e-41, 7.5e-6, 5.5e-5, 2.2e-13, 2.4e-12},
                        2.04612e-13,
                        1e-4),
                new Propagated(
                        "a logarithm, NPL report DEM-ES-011, 9.2, to first order",
                        x -> Math.log(x[0]),
                        new double[] {0.6},
                        new double[] {Rectangular.standardUncertainty(0.1, 1.1)},
                        0.4811252,
                        1e-5),
                new Propagated(
                        "a ratio times a standard, university course",
                        x -> x[0] / x[1] * x[2],
                        new double[] {0.182, 0.1823, 0.6978},
                        new double[] {0.00093, 0.00058, 0.0026},
                        0.004932,
                        2e-3));
    }

    private static double mass(double[] x) {
        return (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
    }

    private static double viscosity(double[] x) {
        return x[0] * x[1] * (x[3] - x[4]) / (x[2] * (x[3] - x[5]));
    }

    @ParameterizedTest
    @MethodSource("firstOrders")
    void uncertainties_combine_as_published(Propagated c) {
        assertThat(firstOrder(c.model, c.at, c.u)).isCloseTo(c.expected, within(c.expected * c.share));
    }

    /** Shares of variance of a sum, 0.64 and 0.36; of a product of normals the first order leaves the interaction out. */
    @Test
    void shares_of_the_inputs_are_those_published() {
        List<FirstOrder.Slope> sum = slopes(x -> 1 + 2 * x[0] + 3 * x[1], new double[] {0, 0}, new double[] {1, 0.5});
        double u = FirstOrder.uncertainty(sum);
        assertThat(u * u).isCloseTo(6.25, within(1e-9));
        assertThat(Math.pow(sum.get(0).contribution() / u, 2)).isCloseTo(0.64, within(1e-9));
        assertThat(Math.pow(sum.get(1).contribution() / u, 2)).isCloseTo(0.36, within(1e-9));
        List<FirstOrder.Slope> product = slopes(x -> x[0] * x[1], new double[] {1, 2}, new double[] {0.3, 0.4});
        assertThat(Math.pow(product.get(0).contribution(), 2) / 0.5344).isCloseTo(0.6736526946107785, within(1e-9));
        assertThat(Math.pow(product.get(1).contribution(), 2) / 0.5344).isCloseTo(0.29940119760479045, within(1e-9));
    }

    /** Where the slope vanishes at the point, the bends tell what the first order does not see: JCGM 101:2008, 9.3. */
    @Test
    void the_bend_of_what_is_not_straight_is_seen_although_its_slope_is_nil() {
        List<FirstOrder.Slope> slopes = slopes(x -> x[0] * x[0], new double[] {0}, new double[] {1000});
        assertThat(FirstOrder.uncertainty(slopes)).isEqualTo(0);
        assertThat(FirstOrder.withBends(slopes)).isEqualTo(1);
    }

    // uncertainty, sampled

    /** JCGM 101:2008, 9.3 (from memory): u 0.0754, shortest 95 % interval 1.0834 to 1.3825. */
    @Test
    void a_mass_is_calibrated_as_the_supplement_says() {
        double[] mass = sampled(
                PublishedSurenessTest::mass,
                MANY,
                normal(100_000, 0.05),
                normal(1.234, 0.02),
                uniform(1.1, 1.3),
                uniform(7000, 9000),
                uniform(7950, 8050));
        assertThat(mean(mass)).isCloseTo(1.234, within(0.001));
        assertThat(deviation(mass)).isCloseTo(0.0754, within(0.0005));
        assertThat(shortest(mass)).containsExactly(new double[] {1.0834, 1.3825}, Offset.offset(0.004));
    }

    private record Spread(
            String name,
            ToDoubleFunction<double[]> model,
            Map<String, Double> expected,
            double within,
            RealDistribution... x) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Spread> spreads() {
        double root = Math.sqrt(3);
        RealDistribution one = uniform(-root, root);
        return Stream.of(
                new Spread(
                        "four rectangular, JCGM 101:2008, 9.2.3: 3.88 and not 3.92",
                        x -> Arrays.stream(x).sum(),
                        Map.of("u", 2.0, "lower", -3.8794067, "upper", 3.8794067),
                        0.02,
                        one,
                        one,
                        one,
                        one),
                new Spread(
                        "one rectangular that dominates, JCGM 101:2008, 9.2.4: 17.0 and not 19.9",
                        x -> Arrays.stream(x).sum(),
                        Map.of("u", 10.14889, "upper", 17.0158141),
                        0.1,
                        one,
                        one,
                        one,
                        uniform(-10 * root, 10 * root)),
                new Spread(
                        "a logarithm, NPL report DEM-ES-011, 9.2",
                        x -> Math.log(x[0]),
                        Map.of("mean", -0.6649003, "u", 0.6062267, "low", -1.89712, "high", 0.0953102),
                        0.003,
                        uniform(0.1, 1.1)),
                new Spread(
                        "falling ball viscometer, NIST Technical Note 1900, E3",
                        PublishedSurenessTest::viscosity,
                        Map.of("mean", 5.82, "u", 1.11),
                        0.01,
                        normal(4.63, 0.0463),
                        normal(61, 6.1),
                        normal(36.6, 5.49),
                        normal(2217, 0.5),
                        normal(1180, 0.5),
                        normal(810, 0.5)));
    }

    @ParameterizedTest
    @MethodSource("spreads")
    void what_is_sampled_spreads_as_published(Spread c) {
        double[] values = sampled(c.model, MANY, c.x);
        double[] shortest = shortest(values);
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int tail = (int) Math.round(0.025 * sorted.length);
        Map<String, Double> found = Map.of(
                "mean", mean(values),
                "u", deviation(values),
                "low", shortest[0],
                "high", shortest[1],
                "lower", sorted[tail],
                "upper", sorted[sorted.length - 1 - tail]);
        c.expected.forEach(
                (what, expected) -> assertThat(found.get(what)).as(what).isCloseTo(expected, within(c.within)));
    }

    // points

    /** Unscrambled Sobol points of two dimensions by the direction numbers of Joe and Kuo, run in a public statistics library. */
    @Test
    void the_first_eight_points_are_sobols() {
        double middle = 0.5 / 8;
        assertThat(SobolPoints.of(2, 8).stream()
                        .map(p -> List.of(p[0] - middle, p[1] - middle))
                        .toList())
                .containsExactlyInAnyOrder(
                        List.of(0.0, 0.0),
                        List.of(0.5, 0.5),
                        List.of(0.75, 0.25),
                        List.of(0.25, 0.75),
                        List.of(0.375, 0.375),
                        List.of(0.875, 0.875),
                        List.of(0.625, 0.125),
                        List.of(0.125, 0.625));
    }

    @Test
    void along_every_axis_each_stratum_holds_one_point() {
        List<double[]> points = SobolPoints.of(40, 1024);
        for (int axis = 0; axis < 40; axis++) {
            int at = axis;
            assertThat(points.stream().map(p -> (int) Math.floor(p[at] * 1024)).distinct())
                    .hasSize(1024);
        }
    }
}
