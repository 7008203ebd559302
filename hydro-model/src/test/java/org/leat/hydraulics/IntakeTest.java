package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.leat.law.Answer;
import org.leat.law.Gravity;

class IntakeTest {

    @Property
    void a_screen_more_blocked_never_loses_less(
            @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 0.6) double open,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.9) double c) {
        double left = open * (1 - c);
        assertThat(PerforatedPlate.lossCoefficient(left).orThrow())
                .isGreaterThan(PerforatedPlate.lossCoefficient(open).orThrow());
        assertThat(WireMesh.lossCoefficient(left).orThrow())
                .isGreaterThan(WireMesh.lossCoefficient(open).orThrow());
        assertThat(rack(c)).isGreaterThan(rack(0));
        assertThat(PerforatedPlate.lossCoefficientOnHoles(left))
                .isLessThanOrEqualTo(PerforatedPlate.lossCoefficientOnHoles(0));
    }

    private static double rack(double blocked) {
        return KirschmerRack.lossCoefficient(KirschmerRack.SHARP, 0.004, 0.01, 1, blocked)
                .orThrow();
    }

    @Test
    void a_screen_wholly_blocked_has_no_finite_loss() {
        assertThat(PerforatedPlate.lossCoefficient(0)).isInstanceOf(Answer.Outside.class);
        assertThat(WireMesh.lossCoefficient(0)).isInstanceOf(Answer.Outside.class);
        assertThat(KirschmerRack.lossCoefficient(KirschmerRack.ROUND, 0.004, 0.01, 1, 1))
                .isInstanceOf(Answer.Outside.class);
    }

    @Test
    void an_open_surface_loses_nothing() {
        assertThat(PerforatedPlate.lossCoefficient(1).orThrow()).isZero();
        assertThat(WireMesh.lossCoefficient(1).orThrow()).isZero();
        assertThat(WireMesh.openShare(0.003, 0.001)).isCloseTo(0.5625, within(1e-12));
        assertThat(PerforatedPlate.holeArea(100, 0.004)).isCloseTo(1.256637e-3, within(1e-9));
    }

    /** A single hole in a wide plate: K on the hole 2.9 is a discharge coefficient near 0.59, the known 0.6. */
    @Test
    void far_apart_holes_are_sharp_orifices() {
        assertThat(1 / Math.sqrt(PerforatedPlate.lossCoefficientOnHoles(0))).isCloseTo(0.6, within(0.02));
    }

    @Test
    void the_published_formulas_settle_the_depth_and_no_fixed_multiple() {
        double straight = Submergence.STRAIGHT_APPROACH;
        double slow = Submergence.leastAboveCrown(straight, 0.2, 0.05);
        assertThat(slow).isCloseTo(Submergence.hydraulicInstitute(0.2, 0.05) - 0.025, within(1e-12));
        assertThat(slow).isLessThan(3 * 0.05);
        // D 0.1 m at 1 m/s: 0.33 m over the mouth (ANSI/HI 9.8, D (1 + 2.3 F), read)
        assertThat(Submergence.hydraulicInstitute(1, 0.1)).isCloseTo(0.33, within(0.005));
        double fast = Submergence.leastAboveCrown(straight, 3, 0.1);
        assertThat(fast).isCloseTo(Submergence.hydraulicInstitute(3, 0.1) - 0.05, within(1e-12));
        assertThat(Submergence.knauss(3, 0.1)).isCloseTo(0.1 * (0.5 + 6 / Math.sqrt(0.980665)), within(1e-12));
        assertThat(Submergence.gordon(Submergence.LATERAL_APPROACH, 3, 0.1))
                .isGreaterThan(Submergence.gordon(straight, 3, 0.1));
    }

    /** Silt sinks by Stokes' law, gravel with constant drag: the two limits of the formula, coded here from the texts. */
    @Test
    void sand_sinks_between_stokes_and_constant_drag() {
        double nu = 1.004e-6;
        double silt = 1e-5;
        double stokes = SettlingVelocity.QUARTZ * Gravity.STANDARD * silt * silt / (18 * nu);
        assertThat(SettlingVelocity.ofSand(silt, nu)).isCloseTo(stokes, within(0.01 * stokes));
        double gravel = 0.05;
        double drag = Math.sqrt(SettlingVelocity.QUARTZ * Gravity.STANDARD * gravel / 0.75);
        assertThat(SettlingVelocity.ofSand(gravel, nu)).isCloseTo(drag, within(0.01 * drag));
    }

    @Property
    void the_finest_grain_caught_sinks_as_fast_as_water_rises(
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 20) double litres) {
        double grain = SettlingVelocity.finestGrainCaught(litres / 1000, 1.5, 0.6, 1.3e-6);
        assertThat(SettlingVelocity.ofSand(grain, 1.3e-6) * 1.5 * 0.6).isCloseTo(litres / 1000, within(1e-9));
    }

    @Test
    void steeper_falls_hold_air_more_firmly() {
        double flat = AirPocketFlushing.leastVelocity(0.08, 0).orThrow();
        assertThat(flat / Math.sqrt(Gravity.STANDARD * 0.08)).isCloseTo(0.671, within(1e-9));
        assertThat(AirPocketFlushing.leastVelocity(0.08, 0.3).orThrow()).isGreaterThan(flat);
        assertThat(AirPocketFlushing.leastVelocity(0.08, 0.5)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void losses_move_between_bores_and_areas() {
        double area = Math.PI / 4 * 0.05 * 0.05;
        double head = LossCoefficient.perFlowSquared(0.5, area) * 0.002 * 0.002;
        double velocity = 0.002 / area;
        assertThat(head).isCloseTo(0.5 * velocity * velocity / (2 * Gravity.STANDARD), within(1e-12));
        assertThat(LossCoefficient.gradualContraction(0.08, 0.05, 4)).isInstanceOf(Answer.Outside.class);
        assertThatThrownBy(() -> LossCoefficient.onBore(1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_pipe_part_full_fills_when_it_must() {
        double most = ManningPipe.capacity(0.0971, 0.009, 0.02);
        assertThat(ManningPipe.normalDepthRatio(most * 1.01, 0.0971, 0.009, 0.02))
                .isInstanceOf(Answer.Outside.class);
        assertThat(ManningPipe.normalDepthRatio(most * 0.99, 0.0971, 0.009, 0.02)
                        .orThrow())
                .isBetween(0.85, 0.94);
        double full = Math.PI / 4 * 0.0971 * 0.0971 * Math.pow(0.0971 / 4, 2.0 / 3) * Math.sqrt(0.02) / 0.009;
        assertThat(most / full)
                .as("the known maximum of a round pipe, 1.076 at depth 0.938")
                .isCloseTo(1.0757, within(1e-3));
    }
}
