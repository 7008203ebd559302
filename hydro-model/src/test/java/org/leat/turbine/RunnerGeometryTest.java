package org.leat.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.law.Answer;

class RunnerGeometryTest {

    @Property
    void a_wheel_of_optimum_diameter_runs_at_the_wanted_ratio(
            @ForAll @DoubleRange(min = 10, max = 500) double speed,
            @ForAll @DoubleRange(min = 5, max = 60) double jet,
            @ForAll @DoubleRange(min = 0.2, max = 0.9) double ratio) {
        double diameter = OptimumPitchDiameter.of(speed, jet, ratio);
        assertThat(SpeedRatio.onJet(diameter, speed, jet)).isCloseTo(ratio, within(1e-12));
    }

    /** Follows single particles of the outermost water past a turning wheel: a check by counting, not by formula. */
    @Property(tries = 200)
    void the_least_bucket_count_lets_no_particle_through_and_a_quarter_fewer_does(
            @ForAll @DoubleRange(min = 6, max = 16) double pitchToJet,
            @ForAll @DoubleRange(min = 0.9, max = 1.4) double tipBeyondPitchInJets,
            @ForAll @DoubleRange(min = 0.3, max = 0.55) double ratio) {
        double radius = pitchToJet / 2;
        double tip = radius + tipBeyondPitchInJets;
        int least = (int) LeastBucketCount.of(radius, tip, 1, ratio).orThrow();
        assertThat(someParticlePasses(radius, tip, ratio, least)).isFalse();
        assertThat(someParticlePasses(radius, tip, ratio, (int) (0.75 * least))).isTrue();
    }

    /** Jet velocity is one; a bucket is the tip's point where it crosses the filament. */
    private static boolean someParticlePasses(double radius, double tip, double ratio, int buckets) {
        double filament = radius + 0.5;
        double psi = Math.acos(filament / tip);
        double halfChord = Math.sqrt(tip * tip - filament * filament);
        double omega = ratio / radius;
        double spacing = 2 * Math.PI / buckets;
        for (int i = 0; i < 500; i++) {
            double behind = spacing * (i + 0.5) / 500;
            boolean caught = false;
            for (double angle = behind - psi; angle < psi; angle += 1e-3) {
                double time = (angle - (behind - psi)) / omega;
                double bucket = filament * Math.tan(angle);
                if (time - halfChord >= bucket) {
                    caught = true;
                    break;
                }
            }
            if (!caught) {
                return true;
            }
        }
        return false;
    }

    @Test
    void the_usual_rule_has_a_small_reserve_over_the_least_count() {
        int usual = TaygunBucketCount.whole(0.2, 0.02);
        for (double tip : new double[] {0.118, 0.119, 0.12}) {
            double least = LeastBucketCount.of(0.1, tip, 0.02, 0.46).orThrow();
            assertThat(least).as("tip radius %s", tip).isBetween(0.8 * usual, 1.0 * usual);
        }
    }

    @Test
    void tips_that_do_not_cover_the_jet_have_no_least_count() {
        assertThat(LeastBucketCount.of(0.1, 0.105, 0.02, 0.46))
                .isEqualTo(Answer.below("least bucket count", "tipRadius", 0.105, 0.11, "m"));
        assertThat(LeastBucketCount.of(0.1, 0.12, 0.02, 1.2).isValue()).isFalse();
    }

    @Test
    void a_whole_bucket_count_is_rounded_up() {
        assertThat(TaygunBucketCount.whole(0.2, 0.018)).isEqualTo(21);
        assertThat(TaygunBucketCount.whole(0.2, 0.02)).isEqualTo(20);
    }

    @Test
    void six_jets_just_do_not_disturb_each_other_on_a_usual_wheel() {
        double least =
                JetSpacing.least(20, 0.46, JetSpacing.usualPath(0.02), 0.1).orThrow();
        assertThat(Math.toDegrees(least)).isBetween(48.0, 60.0);
        assertThat(JetSpacing.least(20, 1, 0.04, 0.1).isValue()).isFalse();
    }

    @Test
    void the_greatest_jet_fills_the_least_width_ratio() {
        double jet = BucketProportions.greatestJet(RunnerType.PELTON, 0.056);
        assertThat(jet).isCloseTo(0.02, within(1e-12));
        assertThat(BucketProportions.USUAL_WIDTH.holds(BucketProportions.ratio(0.06, jet)))
                .isTrue();
        assertThat(BucketProportions.USUAL_LENGTH.holds(BucketProportions.ratio(0.06, jet)))
                .isFalse();
        assertThat(PitchToJetRatio.of(0.2, jet)).isGreaterThan(PitchToJetRatio.GOOD);
    }

    @Test
    void metric_horsepower_makes_the_specific_speed_larger_by_its_root() {
        double horsepower = 735.49875;
        assertThat(SpecificSpeed.ofPower(10, 1000 * 1000 / horsepower, 30) / SpecificSpeed.ofPower(10, 1000, 30))
                .isCloseTo(1.166, within(0.0005));
    }

    @Test
    void a_jet_in_the_plane_pushes_nothing_along_the_shaft() {
        assertThat(AxialThrust.of(1000, 0.002, 20, 9, 0, 0.9, 0)).isZero();
        double all = AxialThrust.of(1000, 0.002, 20, 9, Math.toRadians(20), 0, 0);
        assertThat(all).isCloseTo(1000 * 0.002 * 20 * Math.sin(Math.toRadians(20)), within(1e-9));
    }

    @Test
    void tail_water_stays_four_jets_and_half_a_bucket_below() {
        assertThat(TailwaterClearance.least(0.02, 0.05)).isCloseTo(0.105, within(1e-12));
    }
}
