package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.leat.catalogue.tables.RunnerMaterial;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.duties.BearingDuty;
import org.leat.plant.duties.BucketNeck;
import org.leat.plant.duties.BucketStrength;
import org.leat.plant.solved.WaterSide.Jet;

/** Loads, stresses and proportions of the wheel of a running plant, worked again by hand from its jet and speed. */
class WheelTest {

    private static final double GRAVITY = 9.80665;

    private final Cases cases = Plant.of(Plants.read(Plants.statedText("24 m", "9 mm", "160 mm", "")))
            .solve();
    private final Running running = cases.running().get(0);
    private final Jet jet = running.water().jets().get(0);

    private double density() {
        return cases.numbers().water().density();
    }

    private static BucketStrength strength(String material, double hottest) {
        RunnerMaterial row = RunnerMaterial.find(material).orElseThrow();
        return new BucketStrength(row, row.strengthAcross(), hottest);
    }

    @Test
    void a_jammed_neck_bends_under_the_whole_jet_turned_back() {
        BucketNeck neck = new BucketNeck(0.020, 0.010, 0.015, 0.05);
        double area = Math.PI / 4 * jet.diameter() * jet.diameter();
        double force = density()
                * area
                * jet.velocity()
                * jet.velocity()
                * (1 + cases.numbers().runner().returnFactor());
        double bending = 6 * force * 0.015 / (0.020 * 0.010 * 0.010);
        assertThat(neck.jammed(cases.numbers(), running)).isCloseTo(bending, within(1e-6 * bending));
    }

    @Test
    void a_turning_neck_is_hit_by_what_the_jet_is_faster_and_pulled_by_the_bucket() {
        BucketNeck neck = new BucketNeck(0.020, 0.010, 0.015, 0.05);
        double speed = running.operatingPoint().speed();
        double relative = jet.velocity() - speed * 0.080;
        double force = density()
                * Math.PI
                / 4
                * jet.diameter()
                * jet.diameter()
                * relative
                * relative
                * (1 + cases.numbers().runner().returnFactor());
        double stress = 6 * force * 0.015 / (0.020 * 0.010 * 0.010) + 0.05 * 0.080 * speed * speed / (0.020 * 0.010);
        assertThat(neck.turning(cases.numbers(), running)).isCloseTo(stress, within(1e-6 * stress));
    }

    @Test
    void at_runaway_the_greater_of_rim_and_neck_counts() {
        LoadLost lost = cases.loadLost().get(0);
        double rim = 2700 * Math.pow(lost.speed() * 0.080, 2);
        double pull = 1 * 0.080 * lost.speed() * lost.speed() / (0.020 * 0.010);
        assertThat(new BucketNeck(0.020, 0.010, 0, 1e-6).runAway(cases.numbers(), lost, 2700))
                .isCloseTo(rim, within(1e-6 * rim));
        assertThat(new BucketNeck(0.020, 0.010, 0, 1).runAway(cases.numbers(), lost, 2700))
                .isCloseTo(pull, within(1e-6 * pull));
    }

    @Test
    void what_would_break_at_the_first_jam_is_looked_at_before_every_start() {
        BucketStrength petg = strength("PETG", 293.15);
        BucketNeck sound = new BucketNeck(0.040, 0.030, 0.015, 0.02);
        BucketNeck thin = new BucketNeck(0.004, 0.001, 0.015, 0.02);
        assertThat(sound.inspectionInterval(cases.numbers(), running, petg)).isPositive();
        assertThat(thin.inspectionInterval(cases.numbers(), running, petg)).isZero();
    }

    @Test
    void what_does_not_hold_its_shape_may_see_no_stress() {
        RunnerMaterial petg = RunnerMaterial.find("PETG").orElseThrow();
        BucketStrength cool = strength("PETG", 293.15);
        assertThat(cool.allowedOnce().orElseThrow())
                .isCloseTo(0.5 * petg.strengthAcross() * petg.wetFactor(), within(1.0));
        assertThat(strength("PETG", 373.15).allowedOnce()).isEqualTo(OptionalDouble.empty());
        assertThat(strength("aluminium-cast", 373.15).allowedAlways()).isPresent();
    }

    @Test
    void a_bearing_bears_jet_and_weight_over_the_overhang() {
        BearingDuty duty = BearingDuty.of(cases.numbers(), running, new BearingDuty.Shaft(4, 0.060, 0.120, false));
        double pull = running.operatingPoint().torque() / 0.080;
        double load = (pull + 4 * GRAVITY) * (0.120 + 0.060) / 0.120;
        assertThat(duty.load()).isCloseTo(load, within(1e-6 * load));
        assertThat(duty.turns()).isTrue();
    }

    @Test
    void the_rating_needed_for_a_life_lasts_that_life() {
        BearingDuty.Shaft shaft = new BearingDuty.Shaft(4, 0.060, 0.120, false);
        double life = 20_000 * 3600.0;
        double needed = BearingDuty.neededRating(cases, shaft, life).orElseThrow();
        assertThat(BearingDuty.worst(cases, shaft).life(needed).orThrow()).isCloseTo(life, within(1e-6 * life));
    }

    @Test
    void the_wheel_is_told_in_diameters_of_its_thickest_jet() {
        JetOnRunner thickest = cases.thickestJet();
        assertThat(thickest.pitchRatio()).isCloseTo(0.160 / thickest.diameter(), within(1e-9));
        // Taygun: half of that and fifteen
        assertThat(thickest.usualBuckets()).isCloseTo(thickest.pitchRatio() / 2 + 15, within(1e-9));
        assertThat(thickest.usualWholeBuckets()).isEqualTo((int) Math.ceil(thickest.usualBuckets()));
        assertThat(thickest.leastTailwaterClearance(0.030)).isCloseTo(4 * thickest.diameter() + 0.015, within(1e-12));
    }
}
