package org.leat.pack.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is sold next to what is needed; a size that is needed exactly is itself. */
class StandardSizesTest {

    @Test
    void a_rating_is_the_next_one_up_and_itself_where_it_is_sold() {
        assertThat(StandardSizes.volts(100)).hasValue(100);
        assertThat(StandardSizes.volts(100.1)).hasValue(150);
        assertThat(StandardSizes.volts(1001)).isEmpty();
        assertThat(StandardSizes.bearing(5850)).hasValue(5850);
        assertThat(StandardSizes.bearing(5851)).hasValue(6370);
    }

    @Test
    void a_pipe_is_the_next_thicker_one_and_itself_where_it_is_sold() {
        assertThat(StandardSizes.dimensionRatio(11)).hasValue(11);
        assertThat(StandardSizes.dimensionRatio(16.9)).hasValue(13.6);
        assertThat(StandardSizes.dimensionRatio(5.9)).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void a_resistance_is_the_next_preferred_one_down_in_every_decade() {
        assertThat(StandardSizes.resistance(4.7)).isEqualTo(4.7);
        assertThat(StandardSizes.resistance(4.69)).isEqualTo(4.3);
        assertThat(StandardSizes.resistance(480)).isEqualTo(470);
        assertThat(StandardSizes.resistance(47)).isEqualTo(47);
        assertThat(StandardSizes.resistance(0.099)).isEqualTo(0.091);
        assertThat(StandardSizes.resistance(0.3)).isEqualTo(0.3);
        assertThat(StandardSizes.resistance(1)).isEqualTo(1);
    }

    @Test
    void a_switch_has_a_quarter_of_room_in_steps_of_five() {
        assertThat(StandardSizes.switchRating(20)).isEqualTo(25);
        assertThat(StandardSizes.switchRating(20.1)).isEqualTo(30);
        assertThat(StandardSizes.switchRating(1)).isEqualTo(5);
    }
}
