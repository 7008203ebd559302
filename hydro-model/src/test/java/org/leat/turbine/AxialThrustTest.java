package org.leat.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The thrust of an oblique jet along the shaft. */
class AxialThrustTest {

    private static final double ANGLE = Math.toRadians(20);

    @Test
    void it_is_what_the_jet_brings_less_what_the_water_takes_away() {
        // along the wheel 20 cos 20° − 9 = 9.7939, across 20 sin 20° = 6.8404, relative 11.9462 m/s; leaves 0.9 of it
        // at 15°
        double brought = 1000 * 0.01 * 6.840403;
        double taken = 1000 * 0.01 * 0.9 * 11.946168 * 0.258819;
        assertThat(AxialThrust.of(1000, 0.01, 20, 9, ANGLE, 0.9, Math.toRadians(15)))
                .isCloseTo(brought - taken, within(1e-3));
        assertThat(AxialThrust.of(1000, 0.01, 20, 9, ANGLE, 0, 1)).isCloseTo(brought, within(1e-3));
    }

    @Test
    void a_jet_in_the_wheel_s_plane_that_leaves_in_it_has_none() {
        assertThat(AxialThrust.of(1000, 0.01, 20, 9, 0, 0.9, 0)).isZero();
    }
}
