package org.leat.turbine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

/** Every published runner case against the law it belongs to; the sources stand in the data file. */
class PublishedRunnerTest {

    private static final double RPM = Math.PI / 30;
    private static final double HALF_PI = Math.PI / 2;

    private static final Map<String, ToDoubleFunction<PublishedCase>> LAWS = Map.ofEntries(
            Map.entry("tq", PublishedRunnerTest::torque),
            Map.entry("eta", c -> runner(c, 1).hydraulicEfficiency(c.in("phi"))),
            Map.entry("tyg", c -> TaygunBucketCount.of(c.in("D"), c.in("d"))),
            Map.entry("ns", c -> SpecificSpeed.ofPower(c.in("n_rpm") * RPM, c.in("P_kW") * 1000, c.in("H"))),
            Map.entry("nqc", c -> SpecificSpeed.ofFlow(c.in("n_rpm") * RPM, c.in("Q"), c.in("H"))),
            Map.entry("pcd", c -> OptimumPitchDiameter.of(c.in("n_rpm") * RPM, jet(c), c.in("phi"))),
            Map.entry("djt", c -> JetDiameter.of(c.in("Q"), (int) c.in("n"), c.in("V"))),
            Map.entry("tgb", PublishedRunnerTest::obliqueRatio),
            Map.entry("rw", PublishedRunnerTest::runaway),
            Map.entry("gk", PublishedRunnerTest::gorlaKhan),
            Map.entry("dx", PublishedRunnerTest::efficiencyAtSpeed),
            Map.entry("ms", PublishedRunnerTest::efficiencyAtSpeed),
            Map.entry("ce14", PublishedRunnerTest::shaftPowerAtBest),
            Map.entry("sw", PublishedRunnerTest::powerAtRatio));

    /** Ranges of textbooks, each with the place where the product holds it. */
    private static final Map<String, ToDoubleFunction<PublishedCase>> TABLED = Map.ofEntries(
            Map.entry("tbk-1", c -> c.expected() * Math.pow(0.1 / JetDiameter.of(c.expected(), 1, 102), 2)),
            Map.entry("tbk-2", c -> OptimumPitchDiameter.of(600 * RPM, 100, 0.47)),
            Map.entry("tbk-3", c -> new ImpulseRunner(RunnerParameters.straight(1, 1)).bestSpeedRatio()),
            Map.entry("tbk-4", c -> SpeedRatio.onHead(RunnerType.PELTON.bestSpeedRatio(), 0.97)),
            Map.entry("tbk-5", c -> usual().runawaySpeed(0.01, 30) / usual().bestSpeed(0.01, 30)),
            Map.entry("tbk-6", c -> middle(BucketProportions.USUAL_WIDTH)),
            Map.entry("tbk-8", c -> middle(BucketProportions.USUAL_DEPTH)),
            Map.entry("tbk-9", c -> PitchToJetRatio.GOOD),
            Map.entry("tbk-10", c -> Math.toDegrees(RunnerType.TURGO.jetAngle())),
            Map.entry("tbk-12", c -> RunnerType.PELTON.specificSpeed().high()));

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-runner");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_law_gives_the_published_value(PublishedCase published) {
        ToDoubleFunction<PublishedCase> law = TABLED.getOrDefault(published.id(), LAWS.get(published.family()));
        assertThat(law).as("law of %s", published).isNotNull();
        published.assertMatches(law.applyAsDouble(published));
    }

    @Test
    void every_case_of_the_file_is_there() {
        assertThat(cases()).hasSize(30);
    }

    private static ImpulseRunner runner(PublishedCase c, double radius) {
        double kappa = c.in("k") * Math.cos(Math.toRadians(c.in("beta_out_deg")));
        double density = c.has("rho_") ? c.in("rho_") : 1000;
        return new ImpulseRunner(RunnerParameters.straight(radius, kappa).withDensity(density));
    }

    private static ImpulseRunner usual() {
        return FittedRunner.usual(RunnerType.PELTON, 0.1, 1000);
    }

    private static double jet(PublishedCase c) {
        return c.in("Cv") * Math.sqrt(2 * gravity(c) * c.in("H"));
    }

    private static double gravity(PublishedCase c) {
        return c.has("g") ? c.in("g") : c.family().equals("pcd") ? 9.80665 : 9.81;
    }

    private static double torque(PublishedCase c) {
        return runner(c, c.in("R")).torque(c.in("Q"), c.in("Vj"), c.in("U") / c.in("R"));
    }

    private static double obliqueRatio(PublishedCase c) {
        double kappa = c.in("k") * Math.cos(Math.toRadians(c.in("beta2_deg")));
        RunnerParameters oblique =
                RunnerParameters.straight(0.1, kappa).withJetAngle(Math.toRadians(c.in("alpha_deg")));
        return new ImpulseRunner(oblique).bestSpeedRatio();
    }

    private static double runaway(PublishedCase c) {
        RunnerParameters parameters = runner(c, c.in("R")).parameters().withFriction(0, c.in("cw"));
        return new ImpulseRunner(parameters).runawaySpeed(c.in("Q"), c.in("Vj"));
    }

    private static double gorlaKhan(PublishedCase c) {
        ImpulseRunner runner = runner(c, 1);
        if (c.has("Q")) {
            return runner.power(c.in("Q"), jet(c), c.in("U"));
        }
        return runner.hydraulicEfficiency(c.in("U") / jet(c)) * c.in("Cv") * c.in("Cv");
    }

    private static double efficiencyAtSpeed(PublishedCase c) {
        double ratio = SpeedRatio.onJet(c.in("D"), c.in("n_rpm") * RPM, jet(c));
        return runner(c, c.in("D") / 2).hydraulicEfficiency(ratio);
    }

    private static double shaftPowerAtBest(PublishedCase c) {
        double kappa = Math.sin(Math.toRadians(c.in("defl_deg")) - HALF_PI);
        ImpulseRunner runner = new ImpulseRunner(RunnerParameters.straight(c.in("R"), kappa)
                .withDensity(c.in("rho_"))
                .withBucketEfficiency(c.in("eta")));
        double flow = Math.PI / 4 * c.in("d") * c.in("d") * c.in("Vj");
        return runner.power(flow, c.in("Vj"), runner.bestSpeed(flow, c.in("Vj")));
    }

    private static double powerAtRatio(PublishedCase c) {
        double kappa = Math.sin(Math.toRadians(c.in("defl_deg")) - HALF_PI);
        ImpulseRunner runner =
                new ImpulseRunner(RunnerParameters.straight(1, kappa).withDensity(c.in("rho_")));
        double flow = Math.PI / 4 * c.in("d") * c.in("d") * c.in("Vj");
        return runner.power(flow, c.in("Vj"), c.in("phi") * c.in("Vj"));
    }

    private static double middle(RunnerType.Span span) {
        return 0.5 * (span.low() + span.high());
    }
}
