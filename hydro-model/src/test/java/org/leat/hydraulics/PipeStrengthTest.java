package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.law.Answer;
import org.leat.law.Gravity;

/** Limits and directions that laws of pipe strength and surge must keep. */
class PipeStrengthTest {

    @Property(tries = 200)
    void a_wave_in_a_pipe_is_slower_than_sound_and_slower_the_softer_the_wall(
            @ForAll @DoubleRange(min = 1e7, max = 2.1e11) double modulus,
            @ForAll @DoubleRange(min = 0.5, max = 20) double wallMillimetres,
            @ForAll @DoubleRange(min = 0.02, max = 0.3) double bore) {
        double wall = wallMillimetres / 1000;
        double rigid = WaveSpeed.rigid(2.1e9, 999.7);
        double stiff = WaveSpeed.thickWall(2.1e9, 999.7, modulus, 0.4, bore, wall, WallRestraint.NO_AXIAL_MOVEMENT);
        double soft = WaveSpeed.thickWall(2.1e9, 999.7, modulus / 2, 0.4, bore, wall, WallRestraint.NO_AXIAL_MOVEMENT);
        assertThat(stiff).isLessThan(rigid);
        assertThat(soft).isLessThan(stiff);
    }

    @Property(tries = 100)
    void a_thick_wall_formula_meets_the_thin_one_as_the_wall_thins(
            @ForAll @DoubleRange(min = 0.05, max = 1) double bore) {
        double wall = bore / 20_000;
        double thick = WaveSpeed.thickWall(2.1e9, 1000, 2e11, 0.3, bore, wall, WallRestraint.UPSTREAM_ONLY);
        double thin = WaveSpeed.thinWall(2.1e9, 1000, 2e11, bore, wall, WallRestraint.UPSTREAM_ONLY.factor(0.3));
        assertThat(thick / thin).isCloseTo(1, within(1e-3));
    }

    @Test
    void a_wall_of_sdr_11_slows_the_wave_by_twelve_per_cent_against_the_thin_formula() {
        double thick = WaveSpeed.thickWall(2.1e9, 999.7, 1e9, 0.45, 0.0514, 0.0058, WallRestraint.NO_AXIAL_MOVEMENT);
        double thin =
                WaveSpeed.thinWall(2.1e9, 999.7, 1e9, 0.0514, 0.0058, WallRestraint.NO_AXIAL_MOVEMENT.factor(0.45));
        assertThat(1 - thick / thin).isEqualTo(0.12, within(0.01));
    }

    @Test
    void michaud_meets_joukowsky_at_the_return_time_and_has_no_answer_before() {
        double a = 310;
        double length = 400;
        double returnTime = 2 * length / a;
        assertThat(Michaud.head(length, 0.71, returnTime, a).orThrow())
                .isEqualTo(Joukowsky.head(a, 0.71), within(1e-12));
        assertThat(Michaud.head(length, 0.71, returnTime * 0.99, a)).isInstanceOf(Answer.Outside.class);
    }

    @Property(tries = 100)
    void a_stop_gives_back_no_more_energy_than_the_column_carried(
            @ForAll @DoubleRange(min = 150, max = 1450) double a, @ForAll @DoubleRange(min = 0.1, max = 5) double v) {
        // ρ g H²/(2 a²) per volume stored in wall and water against ρ V²/2 that was moving
        double rise = Joukowsky.head(a, v);
        double stored = Gravity.STANDARD * Gravity.STANDARD * rise * rise / (2 * a * a);
        assertThat(stored).isCloseTo(v * v / 2, within(1e-9 * v * v));
    }

    @Test
    void half_of_yield_in_a_rusted_tube_holds_less_than_in_a_new_one_and_nothing_once_rusted_through() {
        double whole = Barlow.workingPressure(195e6, 0.5, 0.00324, 0, 0.0603);
        assertThat(Barlow.workingPressure(195e6, 0.5, 0.00324, 0.001, 0.0603)).isLessThan(whole * 0.7);
        assertThat(Barlow.workingPressure(195e6, 0.5, 0.00324, 0.004, 0.0603)).isZero();
    }

    @Test
    void thin_pipe_under_standing_suction_collapses_below_a_fifth_of_a_bar() {
        // the case of PE80 SDR 26 behind a blocked screen: 0.16 bar with 5 % ovality, 0.07 bar allowed
        assertThat(RingBuckling.allowed(160e6, 0.45, 26, 0.05, 1)).isEqualTo(0.16e5, within(0.01e5));
        assertThat(RingBuckling.allowed(160e6, 0.45, 26, 0.05, 2.5)).isEqualTo(0.065e5, within(0.005e5));
    }

    @Test
    void a_straight_pipe_has_no_bend_thrust_and_a_return_bend_twice_the_end_thrust() {
        assertThat(BendThrust.force(6e5, 1000, 0, 0.08, 0)).isZero();
        assertThat(BendThrust.force(6e5, 1000, 0, 0.08, Math.PI))
                .isEqualTo(2 * EndThrust.force(6e5, 0.08), within(1e-9));
        assertThat(ReducerThrust.force(6e5, 1000, 0.004, 0.08, 0.08)).isEqualTo(0, within(1e-9));
    }

    @Test
    void a_held_pipe_pulls_with_modulus_times_strain_times_area() {
        double force = HeldThermalForce.greatest(800e6, 1.8e-4, -30, 0.063, 0.0058);
        assertThat(force).isEqualTo(800e6 * 0.0054 * Math.PI / 4 * (0.063 * 0.063 - 0.0514 * 0.0514), within(1e-6));
    }

    @Test
    void a_million_cycles_of_pvc_lie_near_eleven_megapascal() {
        assertThat(VinsonCycles.toFailure(11e6).orThrow()).isBetween(0.8e6, 1.3e6);
        assertThat(HoopStress.stress(10e5, 21)).isEqualTo(10e6, within(1e-6));
    }

    @Test
    void impossible_arguments_are_refused() {
        assertThatThrownBy(() -> Joukowsky.head(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RingBuckling.critical(1e9, 0.7, 11)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Barlow.pressure(1e8, 0.04, 0.06)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WaveSpeed.thinWall(2.1e9, 1000, -1, 0.1, 0.01, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EndThrust.force(1e5, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
