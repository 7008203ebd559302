package org.leat.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.law.Answer.Outside;

class RunnerStrengthTest {

    @Test
    void a_running_bucket_sees_three_and_a_half_times_less_than_a_stalled_one() {
        double stalled = JetForce.stalled(1000, 2e-4, 26, 0.87);
        double running = JetForce.running(1000, 2e-4, 26, 0.46 * 26, 0.87);
        assertThat(stalled / running).isCloseTo(3.43, within(0.01));
        assertThat(JetForce.running(1000, 2e-4, 26, 27, 0.87)).isZero();
    }

    @Property
    void one_stalled_bucket_carries_the_stall_torque_of_the_whole_wheel(
            @ForAll @DoubleRange(min = 2, max = 60) double jet,
            @ForAll @DoubleRange(min = 0, max = 1) double kappa,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double radius) {
        double area = 3e-4;
        ImpulseRunner runner = new ImpulseRunner(RunnerParameters.straight(radius, kappa));
        assertThat(JetForce.stalled(1000, area, jet, kappa) * radius)
                .isCloseTo(runner.stallTorque(area * jet, jet), within(1e-9 * jet * jet));
    }

    @Property
    void a_hole_that_reaches_the_rim_leaves_a_ring(
            @ForAll @DoubleRange(min = 0.02, max = 0.5) double radius,
            @ForAll @DoubleRange(min = 0.1, max = 0.45) double poisson) {
        double ring = RimStress.of(1270, 200 * radius);
        assertThat(DiscStress.withHole(1270, 200, radius, radius, poisson)).isCloseTo(ring, within(1e-9 * ring));
        assertThat(DiscStress.withHole(1270, 200, radius, 0, poisson))
                .isCloseTo(2 * DiscStress.solid(1270, 200, radius, poisson), within(1e-9 * ring));
    }

    @Test
    void bending_and_pull_add_up_at_the_root() {
        double bending = BucketRootStress.bending(252, 0.03, 0.02, 0.012);
        double pull = 126.35 / (0.02 * 0.012);
        assertThat(BucketRootStress.combined(252, 0.03, 0.02, 0.012, 126.35)).isCloseTo(bending + pull, within(1e-3));
    }

    /** ISO 281:2007, table 12. */
    @Test
    void reliability_shortens_life_as_the_standard_tables_it() {
        assertThat(LifeReliability.factor(0.90).orThrow()).isEqualTo(1);
        assertThat(LifeReliability.factor(0.96).orThrow()).isCloseTo(0.55, within(1e-12));
        assertThat(LifeReliability.factor(0.97).orThrow()).isCloseTo(0.47, within(1e-12));
        assertThat(LifeReliability.factor(0.98).orThrow()).isCloseTo(0.37, within(1e-12));
        assertThat(LifeReliability.factor(0.99).orThrow()).isCloseTo(0.25, within(1e-12));
        assertThat(LifeReliability.factor(0.5)).isInstanceOf(Outside.class);
        assertThat(LifeReliability.factor(0.9999)).isInstanceOf(Outside.class);
    }

    @Property
    void a_bearing_of_the_needed_rating_lives_as_long_as_wanted(
            @ForAll @DoubleRange(min = 50, max = 5000) double load,
            @ForAll @DoubleRange(min = 10, max = 400) double speed,
            @ForAll @DoubleRange(min = 1e7, max = 1e9) double life,
            @ForAll boolean roller) {
        double rating = BearingLife.neededRating(load, speed, life, roller);
        assertThat(BearingLife.basic(rating, load, speed, roller).orThrow()).isCloseTo(life, within(1e-9 * life));
    }

    @Test
    void a_bearing_loaded_past_half_its_rating_has_no_rating_life() {
        assertThat(BearingLife.basic(1000, 501, 100, false)).isInstanceOf(Outside.class);
    }

    @Test
    void overhung_loads_are_in_balance() {
        double near = OverhungBearings.near(100, 0.05, 0.1);
        double far = OverhungBearings.far(100, 0.05, 0.1);
        assertThat(near - far).isCloseTo(100, within(1e-12));
        assertThat(near * 0.05).isCloseTo(far * 0.15, within(1e-12));
        assertThat(OverhungBearings.moment(100, 0.05)).isCloseTo(5, within(1e-12));
    }

    @Property
    void the_stiffness_under_the_critical_speed_is_that_of_the_overhang_by_energy(
            @ForAll @DoubleRange(min = 0.02, max = 0.2) double overhang,
            @ForAll @DoubleRange(min = 0.05, max = 0.4) double spacing) {
        double modulus = 2e11;
        double diameter = 0.02;
        double inertia = Math.PI * Math.pow(diameter, 4) / 64;
        double energy = 0;
        int steps = 4000;
        for (int i = 0; i < steps; i++) {
            double x = (i + 0.5) / steps;
            double outside = x * overhang;
            double between = x * overhang;
            energy += outside * outside * overhang / steps + between * between * spacing / steps;
        }
        double deflection = energy / (modulus * inertia);
        double critical = CriticalSpeed.overhung(modulus, diameter, 3, overhang, spacing);
        assertThat(critical).isCloseTo(Math.sqrt(1 / (deflection * 3)), within(1e-6 * critical));
    }

    @Test
    void torque_alone_gives_root_three_times_the_shear() {
        assertThat(ShaftStress.vonMises(0, 25, 0.017))
                .isCloseTo(Math.sqrt(3) * ShaftStress.torsion(-25, 0.017), within(1e-3));
        assertThat(ShaftStress.vonMises(25, 0, 0.017)).isCloseTo(ShaftStress.bending(25, 0.017), within(1e-3));
    }

    @Test
    void warm_plastic_loses_strength_until_it_holds_no_shape() {
        assertThat(ThermalDerating.factor(280, 328).orThrow()).isEqualTo(1);
        assertThat(ThermalDerating.factor(312.15, 328.15).orThrow()).isCloseTo(0.5, within(1e-12));
        assertThat(ThermalDerating.factor(328.15, 328.15)).isInstanceOf(Outside.class);
    }

    @Property
    void less_stress_never_cracks_earlier(
            @ForAll @DoubleRange(min = 0.05, max = 1) double share,
            @ForAll @DoubleRange(min = 0.5, max = 0.99) double less,
            @ForAll @DoubleRange(min = 0.1, max = 0.5) double fatigueRatio) {
        double more =
                CyclesToCrack.of(share * 40e6, 40e6, fatigueRatio * 40e6, 1e7).orThrow();
        assertThat(CyclesToCrack.of(less * share * 40e6, 40e6, fatigueRatio * 40e6, 1e7)
                        .orThrow())
                .isGreaterThanOrEqualTo(more);
    }

    @Test
    void the_fatigue_line_passes_through_its_two_points() {
        assertThat(CyclesToCrack.of(4.8e6, 40e6, 4.8e6, 1e7).orThrow()).isCloseTo(1e7, within(1.0));
        assertThat(CyclesToCrack.of(40e6, 40e6, 4.8e6, 1e7).orThrow()).isCloseTo(1, within(1e-9));
        assertThat(CyclesToCrack.of(41e6, 40e6, 4.8e6, 1e7)).isInstanceOf(Outside.class);
        assertThat(CyclesToCrack.of(1, 40e6, 4.8e6, 1e7).orThrow()).isEqualTo(CyclesToCrack.MOST);
    }

    @Test
    void a_tenth_of_the_life_passes_between_inspections() {
        double interval = InspectionInterval.of(1e7, 2, 100);
        assertThat(BucketLoadCycles.of(2, 100, interval)).isCloseTo(1e6, within(1e-3));
    }

    @Test
    void untested_printed_strength_leaves_two_megapascal() {
        double across = FatigueAllowance.ACROSS_LAYERS * 45e6;
        assertThat(FatigueAllowance.stress(across, FatigueAllowance.PRINTED_WET, 1, 1))
                .isBetween(2.0e6, 2.5e6);
    }

    @Test
    void threads_that_are_not_tabled_are_outside() {
        assertThat(BoltStressArea.coarsePitch(0.007)).isInstanceOf(Outside.class);
        assertThat(BoltStressArea.of(0.008, BoltStressArea.coarsePitch(0.008).orThrow()) * 1e6)
                .isCloseTo(36.6, within(0.05));
    }

    @Test
    void impossible_parts_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> BucketRootStress.bending(1, 1, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> DiscStress.withHole(1000, 1, 0.1, 0.2, 0.3));
        assertThatIllegalArgumentException().isThrownBy(() -> BearingLife.basic(1000, 0, 1, false));
        assertThatIllegalArgumentException().isThrownBy(() -> CyclesToCrack.of(1, 1e6, 2e6, 1e7));
    }
}
