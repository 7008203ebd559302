package org.leat.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Bolts on a circle, by hand; stress areas of ISO 898-1 table 4 (from memory). */
class BoltShearTest {

    /** 24 N·m on six bolts at 30 mm are 133.3 N each; on 20.1 mm² of M6 that is 6.63 MPa, on 0.69 of its nominal area a little more. */
    @Test
    void six_bolts_of_six_millimetres_carry_a_torque_by_hand() {
        double stress = BoltShear.stress(24, 6, 0.006, 0.06);
        assertThat(stress).isCloseTo(133.3333 / (0.69 * Math.PI / 4 * 36e-6), within(10.0));
        assertThat(stress).isGreaterThan(133.3333 / 20.1e-6).isLessThan(1.1 * 133.3333 / 20.1e-6);
    }

    @Test
    void the_area_taken_is_no_more_than_the_stress_area_of_any_coarse_thread() {
        double[][] tabled = {
            {3, 5.03}, {4, 8.78}, {5, 14.2}, {6, 20.1}, {8, 36.6}, {10, 58.0}, {12, 84.3}, {16, 157}, {20, 245}
        };
        for (double[] thread : tabled) {
            double diameter = thread[0] / 1000;
            double taken = 1 / (BoltShear.stress(1, 1, diameter, 2) * 1);
            assertThat(taken)
                    .as("M%s", thread[0])
                    .isLessThanOrEqualTo(thread[1] * 1e-6)
                    .isGreaterThan(0.85 * thread[1] * 1e-6);
        }
    }
}
