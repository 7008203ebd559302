package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class WeightedMeanTest {

    @Test
    void measurements_that_agree_give_the_weighted_mean_by_hand() {
        // 10 ± 1 and 10.4 ± 2: weights 1 and 1/4, mean (10 + 2.6)/1.25 = 10.08, half-width 1/√1.25
        Estimate mean = WeightedMean.of(List.of(Estimate.of(10, 1.0), Estimate.of(10.4, 2.0)));
        assertThat(mean.value()).isCloseTo(10.08, within(1e-12));
        assertThat(mean.plusMinus().orElseThrow()).isCloseTo(0.894427191, within(1e-9));
    }

    @Test
    void measurements_that_contradict_each_other_are_told_wider_than_either() {
        // 10 ± 1.96 and 20 ± 1.96: standard uncertainties 1, χ² = 50, Birge ratio √50, half-width √50 · 1.96/√2 = 9.8
        Estimate mean = WeightedMean.of(List.of(Estimate.of(10, 1.96), Estimate.of(20, 1.96)));
        assertThat(mean.value()).isCloseTo(15, within(1e-12));
        assertThat(mean.plusMinus().orElseThrow()).isCloseTo(9.8, within(1e-9));
    }

    @Test
    void of_three_that_contradict_each_other_the_spread_is_divided_by_two() {
        // 10, 20 and 30 ± 1.96: mean 20, χ² = 200, Birge ratio √(200/2) = 10, half-width 10 · 1.96/√3
        Estimate mean = WeightedMean.of(List.of(Estimate.of(10, 1.96), Estimate.of(20, 1.96), Estimate.of(30, 1.96)));
        assertThat(mean.value()).isCloseTo(20, within(1e-12));
        assertThat(mean.plusMinus().orElseThrow()).isCloseTo(19.6 / Math.sqrt(3), within(1e-9));
    }

    @Test
    void one_measurement_stands_as_it_is_and_none_or_one_without_half_width_is_refused() {
        assertThat(WeightedMean.of(List.of(Estimate.of(3, 0.2)))).isEqualTo(Estimate.of(3, 0.2));
        assertThatIllegalArgumentException().isThrownBy(() -> WeightedMean.of(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> WeightedMean.of(List.of(Estimate.alone(3))));
    }

    @Property
    void the_mean_lies_between_and_a_further_measurement_of_the_same_never_widens(
            @ForAll @DoubleRange(min = 1, max = 100) double a,
            @ForAll @DoubleRange(min = 1, max = 100) double b,
            @ForAll @DoubleRange(min = 0.01, max = 10) double u) {
        Estimate mean = WeightedMean.of(List.of(Estimate.of(a, u), Estimate.of(b, 2 * u)));
        assertThat(mean.value()).isBetween(Math.min(a, b) - 1e-9, Math.max(a, b) + 1e-9);
        Estimate again = WeightedMean.of(List.of(mean, mean));
        assertThat(again.plusMinus().orElseThrow())
                .isLessThanOrEqualTo(mean.plusMinus().orElseThrow());
    }
}
