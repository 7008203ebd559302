package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.quantity.QuantityKind;

class ComparisonTest {

    @Test
    void the_margin_is_a_share_of_the_limit() {
        assertThat(Comparison.atMost(6, 8, QuantityKind.PRESSURE).margin()).isEqualTo(0.25);
        assertThat(Comparison.atMost(10, 8, QuantityKind.PRESSURE).margin()).isEqualTo(-0.25);
        assertThat(Comparison.atLeast(9, 6, QuantityKind.RATIO).margin()).isEqualTo(0.5);
        assertThat(Comparison.within(0.49, 0.4, 0.5, QuantityKind.RATIO).margin())
                .isCloseTo(0.02, within(1e-12));
        assertThat(Comparison.within(0.3, 0.4, 0.5, QuantityKind.RATIO).margin())
                .isCloseTo(-0.25, within(1e-12));
    }

    @Test
    void a_temperature_is_taken_from_the_freezing_point() {
        Comparison c = Comparison.atMost(273.15 + 63, 273.15 + 70, QuantityKind.TEMPERATURE);
        assertThat(c.margin()).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void the_limit_itself_holds() {
        assertThat(Comparison.atMost(8, 8, QuantityKind.SPEED).holds()).isTrue();
        assertThat(Comparison.atLeast(8, 8, QuantityKind.SPEED).holds()).isTrue();
        assertThat(Comparison.atMost(Math.nextUp(8), 8, QuantityKind.SPEED).holds())
                .isFalse();
    }

    @Test
    void against_a_limit_of_zero_the_margin_is_whole() {
        assertThat(Comparison.atMost(-2, 0, QuantityKind.LENGTH).margin()).isEqualTo(1);
        assertThat(Comparison.atMost(2, 0, QuantityKind.LENGTH).margin()).isEqualTo(-1);
    }

    @Test
    void what_is_not_a_number_cannot_be_compared() {
        assertThatIllegalArgumentException().isThrownBy(() -> Comparison.atMost(Double.NaN, 8, QuantityKind.SPEED));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Comparison.atMost(1, Double.POSITIVE_INFINITY, QuantityKind.SPEED));
    }

    @Property
    void the_margin_is_negative_exactly_where_it_does_not_hold(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
            @ForAll @DoubleRange(min = -1e3, max = 1e3) double low,
            @ForAll @DoubleRange(min = 0, max = 1e3) double width) {
        for (Comparison c : new Comparison[] {
            Comparison.atMost(value, low, QuantityKind.VOLTAGE),
            Comparison.atLeast(value, low, QuantityKind.VOLTAGE),
            Comparison.within(value, low, low + width, QuantityKind.VOLTAGE)
        }) {
            assertThat(c.margin() >= 0).isEqualTo(c.holds());
        }
    }
}
