package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bridge on smooth current, term by term, and a coasting wheel whose losses are known. */
class SmoothBridgeAndCoastingTest {

    @Test
    void each_loss_of_the_bridge_takes_its_part_of_the_voltage() {
        double ideal = 3 * Math.sqrt(2) / Math.PI * 40;
        assertThat(SmoothCurrentBridge.voltage(40, 0, 0, 0, 10)).isCloseTo(ideal, within(1e-12));
        assertThat(SmoothCurrentBridge.voltage(40, 0.5, 0, 0, 10)).isCloseTo(ideal - 15 / Math.PI, within(1e-12));
        assertThat(SmoothCurrentBridge.voltage(40, 0, 0.3, 0, 10)).isCloseTo(ideal - 6, within(1e-12));
        assertThat(SmoothCurrentBridge.voltage(40, 0, 0, 0.7, 10)).isCloseTo(ideal - 1.4, within(1e-12));
    }

    @Test
    void a_six_pulse_bridge_wastes_little_in_ripple() {
        double meanOverRms = 3 / Math.PI / Math.sqrt(0.5 + 3 * Math.sqrt(3) / (4 * Math.PI));
        assertThat(SmoothCurrentBridge.rectificationEfficiency()).isCloseTo(meanOverRms * meanOverRms, within(1e-12));
    }

    /** Speeds of a wheel with both losses, by the solution of J dω/dt = −(T + k ω). */
    private static double speed(double inertia, double constant, double proportional, double from, double time) {
        double level = constant / proportional;
        return (from + level) * Math.exp(-proportional / inertia * time) - level;
    }

    @ParameterizedTest
    @CsvSource({"0.08, 0.5, 0.004, 9, 4", "0.3, 0.2, 0.02, 5, 7", "0.02, 0.05, 0.0001, 3, 3"})
    void two_times_give_back_both_losses(
            double inertia, double constant, double proportional, double first, double second) {
        double middle = speed(inertia, constant, proportional, 150, first);
        double end = speed(inertia, constant, proportional, 150, first + second);
        IronLoss found = Coasting.fromTwoTimes(inertia, 150, middle, end, first, second);
        assertThat(found.power(100)).isCloseTo(constant * 100 + proportional * 1e4, within(1e-5));
        assertThat(found.power(50)).isCloseTo(constant * 50 + proportional * 2500, within(1e-5));
    }

    @Test
    void equal_falls_in_equal_times_are_a_constant_torque() {
        IronLoss found = Coasting.fromTwoTimes(0.08, 150, 100, 50, 5, 5);
        assertThat(found.power(100)).isCloseTo(0.08 * 10 * 100, within(1e-6));
        assertThat(found.power(10)).isCloseTo(0.08 * 10 * 10, within(1e-6));
        assertThatThrownBy(() -> Coasting.fromTwoTimes(0.08, 150, 100.1, 50, 5, 5))
                .hasMessageContaining("falls with speed");
    }
}
