package org.leat.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.turbine.FittedRunner.Fitted;
import org.leat.turbine.FittedRunner.Unfit;

class ImpulseRunnerTest {

    @Provide
    Arbitrary<ImpulseRunner> runners() {
        return Combinators.combine(
                        between(0.02, 0.6),
                        between(0.2, 1),
                        between(0, 0.98),
                        between(0, 0.6),
                        between(0, 2),
                        between(0, 0.5),
                        between(0, 1e-3))
                .as((radius, efficiency, kappa, angle, late, bearing, windage) -> new ImpulseRunner(
                        new RunnerParameters(radius, efficiency, kappa, angle, late, bearing, windage, 999.7)));
    }

    private static Arbitrary<Double> between(double low, double high) {
        return Arbitraries.doubles().between(low, high).ofScale(6);
    }

    @Property
    void power_is_never_more_than_the_jets_carry(
            @ForAll("runners") ImpulseRunner runner,
            @ForAll @DoubleRange(min = 0.1, max = 50) double litres,
            @ForAll @DoubleRange(min = 2, max = 60) double jet,
            @ForAll @DoubleRange(min = 0, max = 3) double ratio) {
        double speed = ratio * jet / runner.parameters().pitchRadius();
        assertThat(runner.power(litres / 1000, jet, speed))
                .isLessThanOrEqualTo(runner.jetPower(litres / 1000, jet) * (1 + 1e-12));
        assertThat(runner.hydraulicEfficiency(ratio)).isLessThanOrEqualTo(1 + 1e-12);
    }

    @Property
    void an_oblique_jet_gives_no_more_than_with_all_of_its_relative_speed_turned(
            @ForAll("runners") ImpulseRunner runner, @ForAll @DoubleRange(min = 0, max = 1) double ratio) {
        RunnerParameters p = runner.parameters();
        double turned = 2 * ObliqueJetRatio.power(ratio, p.jetAngle(), p.returnFactor());
        assertThat(runner.hydraulicEfficiency(ratio)).isLessThanOrEqualTo(p.bucketEfficiency() * turned + 1e-9);
    }

    @Property
    void torque_falls_as_the_runner_turns_faster(
            @ForAll("runners") ImpulseRunner runner,
            @ForAll @DoubleRange(min = 0.1, max = 50) double litres,
            @ForAll @DoubleRange(min = 2, max = 60) double jet,
            @ForAll @DoubleRange(min = 0, max = 2) double ratio,
            @ForAll @DoubleRange(min = 0.01, max = 1) double step) {
        double perRatio = jet / runner.parameters().pitchRadius();
        assertThat(runner.torque(litres / 1000, jet, (ratio + step) * perRatio))
                .isLessThan(runner.torque(litres / 1000, jet, ratio * perRatio));
    }

    @Property
    void torque_is_nil_at_runaway_and_not_before(
            @ForAll("runners") ImpulseRunner runner,
            @ForAll @DoubleRange(min = 0.1, max = 50) double litres,
            @ForAll @DoubleRange(min = 2, max = 60) double jet) {
        double runaway = runner.runawaySpeed(litres / 1000, jet);
        double stall = runner.stallTorque(litres / 1000, jet);
        if (stall <= 0) {
            assertThat(runaway).isZero();
            return;
        }
        double scale = stall + runner.parameters().bearingTorque();
        assertThat(runner.torque(litres / 1000, jet, runaway)).isCloseTo(0, within(1e-9 * scale));
        assertThat(runner.torque(litres / 1000, jet, 0.99 * runaway)).isPositive();
    }

    @Property
    void more_flow_gives_no_less_torque_while_the_water_drives(
            @ForAll("runners") ImpulseRunner runner,
            @ForAll @DoubleRange(min = 0.1, max = 50) double litres,
            @ForAll @DoubleRange(min = 1, max = 5) double times,
            @ForAll @DoubleRange(min = 2, max = 60) double jet,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double speed = share * runner.runawaySpeed(litres / 1000, jet);
        assertThat(runner.torque(times * litres / 1000, jet, speed))
                .isGreaterThanOrEqualTo(runner.torque(litres / 1000, jet, speed) - 1e-9);
    }

    @Property
    void water_gives_most_power_at_the_best_ratio(
            @ForAll("runners") ImpulseRunner runner, @ForAll @DoubleRange(min = 0, max = 1.5) double ratio) {
        assertThat(runner.hydraulicEfficiency(ratio))
                .isLessThanOrEqualTo(runner.hydraulicEfficiency(runner.bestSpeedRatio()) + 1e-12);
    }

    @Property
    void the_shaft_gives_most_power_at_best_speed(
            @ForAll("runners") ImpulseRunner runner,
            @ForAll @DoubleRange(min = 0.1, max = 50) double litres,
            @ForAll @DoubleRange(min = 2, max = 60) double jet,
            @ForAll @DoubleRange(min = 0, max = 1.2) double ratio) {
        double best = runner.bestSpeed(litres / 1000, jet);
        double speed = ratio * jet / runner.parameters().pitchRadius();
        assertThat(runner.power(litres / 1000, jet, speed))
                .isLessThanOrEqualTo(
                        runner.power(litres / 1000, jet, best) + 1e-9 * runner.jetPower(litres / 1000, jet));
        assertThat(best)
                .isLessThanOrEqualTo(
                        runner.bestSpeedRatio() * jet / runner.parameters().pitchRadius() + 1e-9);
    }

    @Property(tries = 100)
    void a_fitted_runner_shows_the_measured_numbers(
            @ForAll @DoubleRange(min = 0.3, max = 0.85) double efficiency,
            @ForAll @DoubleRange(min = 1.7, max = 1.97) double runawayFactor,
            @ForAll @DoubleRange(min = 0, max = 0.02) double bearing,
            @ForAll @DoubleRange(min = 0, max = 1) double microWindage) {
        RunnerParameters known = RunnerParameters.straight(0.1, 0.9).withFriction(bearing, microWindage * 1e-6);
        ImpulseRunner runner = ((Fitted) FittedRunner.fit(known, 0.002, 20, efficiency, runawayFactor)).runner();
        double best = runner.bestSpeed(0.002, 20);
        assertThat(runner.efficiency(0.002, 20, best)).isCloseTo(efficiency, within(1e-9));
        assertThat(runner.runawaySpeed(0.002, 20) / best).isCloseTo(runawayFactor, within(1e-6));
    }

    @Property(tries = 100)
    void a_fitted_oblique_runner_shows_the_measured_numbers(
            @ForAll @DoubleRange(min = 0.3, max = 0.85) double efficiency,
            @ForAll @DoubleRange(min = 1.6, max = 2) double runawayFactor,
            @ForAll @DoubleRange(min = 0.1, max = 0.45) double angle) {
        RunnerParameters known = RunnerParameters.straight(0.1, 0.95).withJetAngle(angle);
        if (FittedRunner.fit(known, 0.002, 20, efficiency, runawayFactor) instanceof Fitted fitted) {
            double best = fitted.runner().bestSpeed(0.002, 20);
            assertThat(fitted.runner().efficiency(0.002, 20, best)).isCloseTo(efficiency, within(1e-9));
            assertThat(fitted.runner().runawaySpeed(0.002, 20) / best).isCloseTo(runawayFactor, within(1e-6));
        } else {
            assertThat(runawayFactor).as("only an extreme shape wastes so much").isLessThan(1.75);
        }
    }

    @Test
    void friction_that_alone_lowers_runaway_further_than_measured_is_a_contradiction() {
        RunnerParameters known = RunnerParameters.straight(0.1, 0.9).withFriction(0, 2e-5);
        assertThat(FittedRunner.fit(known, 0.002, 20, 0.6, 1.999)).isInstanceOfSatisfying(Unfit.class, unfit -> {
            assertThat(unfit.reason().input()).isEqualTo("runawayFactor");
            assertThat(unfit.reason().high().getAsDouble()).isBetween(1.9, 1.999);
        });
    }

    @Test
    void numbers_that_contradict_momentum_are_refused_with_a_reason() {
        RunnerParameters flat = RunnerParameters.straight(0.1, 0);
        assertThat(FittedRunner.fit(flat, 0.002, 20, 0.6, 1.8)).isInstanceOfSatisfying(Unfit.class, unfit -> {
            assertThat(unfit.reason().input()).isEqualTo("bestEfficiency");
            assertThat(unfit.reason().high().getAsDouble()).isBetween(0.45, 0.5);
        });
        assertThat(FittedRunner.fit(flat, 0.002, 20, 0.3, 2.3))
                .isInstanceOfSatisfying(
                        Unfit.class, unfit -> assertThat(unfit.reason().input()).isEqualTo("runawayFactor"));
    }

    @Test
    void every_type_is_usual_within_its_own_ranges() {
        for (RunnerType type : RunnerType.values()) {
            ImpulseRunner runner = FittedRunner.usual(type, 0.1, 1000);
            assertThat(runner.hydraulicEfficiency(runner.bestSpeedRatio()))
                    .as("%s", type)
                    .isCloseTo(type.efficiency(), within(1e-6));
            assertThat(type.efficiencyRange().holds(type.efficiency())).isTrue();
            assertThat(runner.runawaySpeed(0.002, 20) / runner.bestSpeed(0.002, 20))
                    .as("%s", type)
                    .isCloseTo(type.runawayFactor(), within(1e-6));
            assertThat(type.bestSpeedRatio()).as("%s", type).isBetween(0.43, 0.53);
        }
    }

    @Test
    void turned_backwards_bearing_and_air_drag_forwards() {
        ImpulseRunner runner = new ImpulseRunner(new RunnerParameters(0.1, 0.9, 0.8, 0, 0.1, 0.3, 2e-4, 1000));
        assertThat(runner.torque(0, 10, -50)).isCloseTo(0.3 + 2e-4 * 2500, within(1e-12));
        assertThat(runner.torque(0, 10, 50)).isCloseTo(-0.3 - 2e-4 * 2500, within(1e-12));
    }

    @Test
    void beyond_runaway_the_water_brakes_along_a_straight_line() {
        ImpulseRunner runner = new ImpulseRunner(new RunnerParameters(0.1, 0.9, 0.8, 0, 0.1, 0, 0, 1000));
        double stalled = runner.waterTorque(0.01, 20, 0);
        assertThat(runner.waterTorque(0.01, 20, 200) / stalled).isCloseTo(1 - 1 - 0.1, within(1e-12));
        assertThat(runner.waterTorque(0.01, 20, 400) / stalled).isCloseTo(1 - 2 - 0.1 * 5, within(1e-12));
        assertThat(runner.waterTorque(0.01, 20, -200) / stalled).isCloseTo(2, within(1e-12));
        assertThat(runner.waterTorque(0.01, 0, 50)).isZero();
    }

    @Test
    void without_water_only_friction_is_left() {
        ImpulseRunner runner =
                new ImpulseRunner(RunnerParameters.straight(0.1, 0.9).withFriction(0.2, 1e-4));
        assertThat(runner.torque(0, 0, 100)).isEqualTo(-1.2);
        assertThat(runner.torque(0.001, 0, 100)).isEqualTo(-1.2);
        assertThat(runner.runawaySpeed(0, 0)).isZero();
        assertThat(runner.efficiency(0, 0, 100)).isZero();
        assertThat(runner.stallTorque(0, 0)).isEqualTo(-0.2);
    }

    @Test
    void a_jet_of_almost_nothing_does_not_brake_beyond_its_mass_flow() {
        ImpulseRunner runner =
                new ImpulseRunner(RunnerParameters.straight(0.1, 1).withLateEntry(1));
        double braking = runner.torque(0.001, 1e-9, 100);
        assertThat(braking).isCloseTo(-0.001 * 1000 * 0.1 * 0.1 * 100 * 2 * 5, within(1e-6));
    }

    @Test
    void impossible_runners_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RunnerParameters.straight(0, 0.9))
                .withMessageContaining("pitchRadius");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RunnerParameters.straight(0.1, 0.9).withBucketEfficiency(1.1))
                .withMessageContaining("bucketEfficiency");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RunnerParameters.straight(0.1, Double.NaN))
                .withMessageContaining("returnFactor");
    }
}
