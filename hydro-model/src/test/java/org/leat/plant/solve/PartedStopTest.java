package org.leat.plant.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.hydraulics.NozzleOpening;
import org.leat.hydraulics.SurgeLine;
import org.leat.hydraulics.SurgeSection;
import org.leat.law.Gravity;

/** Where the bound of a parted column is used, and where it is none. */
class PartedStopTest {

    private static final double BORE = 0.08;
    private static final double SPEED = 1000;
    private static final double HEAD = 50;
    private static final double BOILING = -10;
    private static final double WEIGHT = 9800;

    private static PartedStop stop(double bore, double speed, double surge, NozzleOpening opening, double top) {
        SurgeLine line = new SurgeLine(
                List.of(
                        new SurgeSection(150, bore, speed, 0.02, top, 1),
                        new SurgeSection(150, BORE, SPEED, 0.02, 1, 0)),
                HEAD);
        double flow = surge * Gravity.STANDARD / SPEED * Math.PI / 4 * BORE * BORE;
        return new PartedStop(line, flow, opening, flow, BOILING, WEIGHT);
    }

    /** By hand: 50 m, a surge of 40 m and twice the 60 m above boiling, where the top of the pipe leaves 30 m above boiling. */
    @Test
    void of_one_pipe_stopped_wholly_it_is_tank_surge_and_twice_what_is_above_boiling() {
        double bound = stop(BORE, SPEED, 40, NozzleOpening.step(0), 30)
                .rejoining()
                .bound()
                .orElseThrow();
        assertThat(bound / WEIGHT).isCloseTo(50 + 40 + 2 * 60, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 1000", "0.06, 1000", "0.08, 900", "0.08, 1100"})
    void of_a_line_that_changes_on_its_way_there_is_none(double bore, double speed) {
        assertThat(stop(bore, speed, 40, NozzleOpening.step(0), 30).rejoining().bound())
                .isEmpty();
    }

    @Test
    void of_a_stop_that_leaves_a_nozzle_open_there_is_none() {
        assertThat(stop(BORE, SPEED, 40, NozzleOpening.step(0.5), 30)
                        .rejoining()
                        .bound())
                .isEmpty();
    }

    /** The least of the line, 49 m under the tank, is 59 m above boiling. */
    @Test
    void of_a_surge_beyond_twice_the_least_head_above_boiling_there_is_none() {
        assertThat(stop(BORE, SPEED, 117, NozzleOpening.step(0), 1).rejoining().bound())
                .isPresent();
        assertThat(stop(BORE, SPEED, 119, NozzleOpening.step(0), 1).rejoining().bound())
                .isEmpty();
    }

    @Test
    void a_line_whose_top_boils_before_the_stop_has_neither_bound_nor_blows() {
        Rejoining none = stop(BORE, SPEED, 40, NozzleOpening.step(0), 61).rejoining();
        assertThat(none.bound()).isEmpty();
        assertThat(none.sections()).isEmpty();
        assertThat(none.growing()).isTrue();
    }
}
