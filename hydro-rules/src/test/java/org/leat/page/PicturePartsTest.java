package org.leat.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;

/** The small parts that pictures are made of. */
class PicturePartsTest {

    @Test
    void ticks_are_round_and_lie_within_the_axis() {
        assertThat(Scale.even(0, 9.8, 0, 100).ticks(5)).containsExactly(0.0, 2.0, 4.0, 6.0, 8.0);
        assertThat(Scale.even(-0.9, 6, 0, 100).ticks(5)).containsExactly(0.0, 2.0, 4.0, 6.0);
        assertThat(Scale.logarithmic(20, 500, 0, 100).ticks(5)).containsExactly(20.0, 50.0, 100.0, 200.0, 500.0);
        assertThat(Scale.even(0, 0.5, 0, 100).written(0.1, 5)).isEqualTo("0.1");
        assertThat(Scale.even(-10, 10, 0, 100).written(-5, 4)).isEqualTo("\u22125");
    }

    @Test
    void equal_factors_are_equal_lengths_on_a_logarithmic_axis() {
        Scale scale = Scale.logarithmic(10, 1000, 300, 0);
        assertThat(scale.at(100)).isCloseTo(150, within(1e-9));
        assertThat(scale.at(5)).isEqualTo(300);
        assertThat(scale.at(5000)).isEqualTo(0);
    }

    @Property
    void labels_end_apart_in_their_order_and_within_their_room(
            @ForAll @Size(min = 1, max = 18) List<@DoubleRange(min = -50, max = 450) Double> wanted) {
        double[] placed = LabelSpacing.of(wanted.stream().mapToDouble(w -> w).toArray(), 16, 10, 390);
        double[] sorted = placed.clone();
        Arrays.sort(sorted);
        assertThat(sorted[0]).isGreaterThanOrEqualTo(10);
        assertThat(sorted[sorted.length - 1]).isLessThanOrEqualTo(390);
        for (int i = 1; i < sorted.length; i++) {
            assertThat(sorted[i] - sorted[i - 1]).isGreaterThan(16 - 1e-9);
        }
        for (int i = 0; i < placed.length; i++) {
            for (int j = 0; j < placed.length; j++) {
                if (wanted.get(i) < wanted.get(j)) {
                    assertThat(placed[i]).isLessThan(placed[j]);
                }
            }
        }
    }

    @Test
    void the_share_of_the_year_falls_straight_between_two_points_of_the_curve() {
        List<StreamLevel> levels = List.of(
                new StreamLevel(StreamLevel.Kind.EXCEEDED, 0.1, 0.016, 0, 0.015),
                new StreamLevel(StreamLevel.Kind.EXCEEDED, 0.6, 0.006, 0, 0.005),
                new StreamLevel(StreamLevel.Kind.EXCEEDED, 1, 0.003, 0, 0.002));
        assertThat(YearShare.with(levels, 0.001)).isEqualTo(1);
        assertThat(YearShare.with(levels, 0.002)).isEqualTo(1);
        assertThat(YearShare.with(levels, 0.0035)).isCloseTo(0.8, within(1e-9));
        assertThat(YearShare.with(levels, 0.01)).isCloseTo(0.35, within(1e-9));
        assertThat(YearShare.with(levels, 0.015)).isCloseTo(0.1, within(1e-9));
        assertThat(YearShare.with(levels, 0.02)).isZero();
    }

    @Test
    void of_months_those_count_that_have_the_flow() {
        List<StreamLevel> levels = List.of(
                new StreamLevel(StreamLevel.Kind.MONTH, 2, 0.01, 0, 0.009),
                new StreamLevel(StreamLevel.Kind.MONTH, 8, 0.004, 0, 0.003));
        assertThat(YearShare.with(levels, 0.005)).isEqualTo(0.5);
        assertThat(YearShare.told(levels.get(1))).isEqualTo("August");
    }
}
