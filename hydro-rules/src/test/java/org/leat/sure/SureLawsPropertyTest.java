package org.leat.sure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds of the laws behind a probability of failing, whatever the numbers. */
class SureLawsPropertyTest {

    @Property(tries = 200)
    void what_is_straight_is_propagated_exactly_wherever_its_inputs_are_moved_to(
            @ForAll @DoubleRange(min = -50, max = 50) double a,
            @ForAll @DoubleRange(min = -50, max = 50) double b,
            @ForAll @DoubleRange(min = 0.01, max = 5) double u,
            @ForAll @DoubleRange(min = 0, max = 3) double down,
            @ForAll @DoubleRange(min = 0.01, max = 3) double up) {
        List<FirstOrder.Slope> slopes = List.of(line(a, u, down, up), line(b, 2 * u, down, up));
        double expected = Math.hypot(a * u, 2 * b * u);
        assertThat(FirstOrder.uncertainty(slopes)).isCloseTo(expected, within(1e-6 + expected * 1e-6));
        assertThat(FirstOrder.withBends(slopes)).isCloseTo(expected, within(1e-6 + expected * 1e-6));
    }

    private static FirstOrder.Slope line(double slope, double u, double down, double up) {
        return FirstOrder.slope(
                new FirstOrder.At(10 - down, slope * (10 - down) + 3),
                new FirstOrder.At(10, slope * 10 + 3),
                new FirstOrder.At(10 + up, slope * (10 + up) + 3),
                u);
    }

    @Property(tries = 200)
    void what_is_bent_is_never_taken_as_surer_than_its_slope_says(
            @ForAll @DoubleRange(min = -5, max = 5) double at, @ForAll @DoubleRange(min = 0.1, max = 3) double u) {
        List<FirstOrder.Slope> slopes = List.of(FirstOrder.slope(
                new FirstOrder.At(at - u, (at - u) * (at - u)),
                new FirstOrder.At(at, at * at),
                new FirstOrder.At(at + u, (at + u) * (at + u)),
                u));
        // the square of a normal value: u² = 4 x² u² + 2 u⁴, of which the first order sees the first term
        assertThat(FirstOrder.uncertainty(slopes)).isCloseTo(Math.abs(2 * at * u), within(1e-9 + 1e-9 * u));
        assertThat(Math.pow(FirstOrder.withBends(slopes), 2))
                .isCloseTo(4 * at * at * u * u + Math.pow(u, 4), within(1e-6));
    }

    @Property(tries = 200)
    void a_probability_is_symmetric_rises_with_the_value_and_knows_no_unit(
            @ForAll @DoubleRange(min = -20, max = 20) double beyond,
            @ForAll @DoubleRange(min = 0.01, max = 10) double u,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double unit) {
        double failing = FailingProbability.of(beyond, u);
        assertThat(failing).isBetween(0.0, 1.0);
        assertThat(FailingProbability.of(-beyond, u)).isCloseTo(1 - failing, within(1e-12));
        assertThat(FailingProbability.of(beyond + u / 10, u)).isGreaterThanOrEqualTo(failing);
        assertThat(FailingProbability.of(beyond * unit, u * unit)).isCloseTo(failing, within(1e-9));
    }

    @Property(tries = 30)
    void points_over_a_range_have_its_middle_and_its_standard_uncertainty(
            @ForAll @IntRange(min = 1, max = 60) int dimensions,
            @ForAll @DoubleRange(min = -100, max = 100) double low,
            @ForAll @DoubleRange(min = 0.1, max = 100) double width) {
        double mean = 0;
        double square = 0;
        for (double[] point : SobolPoints.of(dimensions, 256)) {
            double x = low + width * point[dimensions - 1];
            mean += x / 256;
            square += x * x / 256;
        }
        assertThat(mean).isCloseTo(low + width / 2, within(1e-9 * (Math.abs(low) + width)));
        assertThat(Math.sqrt(square - mean * mean))
                .isCloseTo(Rectangular.standardUncertainty(low, low + width), within(width * 1e-4));
    }
}
