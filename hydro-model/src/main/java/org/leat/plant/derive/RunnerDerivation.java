package org.leat.plant.derive;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leat.design.Runner;
import org.leat.design.RunnerKind;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.FittedRunner;
import org.leat.turbine.ImpulseRunner;
import org.leat.turbine.RunnerParameters;
import org.leat.turbine.RunnerType;

/** Runner of a plant, from what was measured or is usual for its kind. */
final class RunnerDerivation {

    private static final double LEAST_RUNAWAY = 1.6;
    private static final double MOST_RUNAWAY = 2;

    private RunnerDerivation() {}

    /**
     * {@return the runner}
     *
     * @param matching speed at which the alternator charges well, rad/s at the runner, for a wheel the design does not
     *     state
     * @param jetVelocity about, m/s
     */
    static RunnerNumbers of(@Nullable Runner runner, double matching, double jetVelocity, Assume assume) {
        RunnerKind kind = runner == null ? RunnerKind.PELTON : runner.kind();
        RunnerType type = type(kind);
        double angle = runner == null ? type.jetAngle() : Si.of(runner.jetAngle(), type.jetAngle());
        double efficiency = runner != null && runner.measuredEfficiency() != null
                ? Si.of(runner.measuredEfficiency())
                : efficiency(type, assume);
        RunnerParameters known = new RunnerParameters(1, 1, type.returnFactor(), angle, 0, 0, 0, 1000);
        ImpulseRunner wheel = wheel(known, efficiency, measuredRunaway(runner), type, assume);
        double usual = 2 * wheel.bestSpeedRatio() * jetVelocity / matching;
        double pitch = runner != null
                ? Si.of(runner.pitchDiameter())
                : assume.placeholder(
                        "/runner/pitch-diameter",
                        QuantityKind.LENGTH,
                        usual,
                        0.6 * usual,
                        1.6 * usual,
                        "assumed/runner-that-suits");
        return new RunnerNumbers(
                kind,
                pitch,
                angle,
                type.returnFactor(),
                wheel.parameters().bucketEfficiency(),
                wheel.parameters().lateEntry(),
                wheel.bestSpeedRatio());
    }

    /** {@return the type whose usual numbers a kind has} */
    static RunnerType type(RunnerKind kind) {
        return switch (kind) {
            case PELTON -> RunnerType.PELTON;
            case TURGO -> RunnerType.TURGO;
            case CUPS -> RunnerType.CUPS;
            case FLAT -> RunnerType.FLAT;
        };
    }

    private static double efficiency(RunnerType type, Assume assume) {
        return assume.sound(
                "/runner/measured-efficiency",
                QuantityKind.RATIO,
                type.efficiency(),
                type.efficiencyRange().low(),
                type.efficiencyRange().high(),
                "assumed/runner-kind");
    }

    private static OptionalDouble measuredRunaway(@Nullable Runner runner) {
        return runner == null || runner.runawayFactor() == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(runner.runawayFactor());
    }

    /** The wheel that shows both numbers; what contradicts momentum is replaced, and said. */
    private static ImpulseRunner wheel(
            RunnerParameters known, double efficiency, OptionalDouble measuredRunaway, RunnerType type, Assume assume) {
        double runaway = measuredRunaway.orElseGet(() -> runaway(type, false, assume));
        FittedRunner fit = FittedRunner.fit(known, 1, 1, efficiency, runaway);
        if (fit instanceof FittedRunner.Unfit unfit && unfit.reason().input().equals("runawayFactor")) {
            runaway = runaway(type, true, assume);
            fit = FittedRunner.fit(known, 1, 1, efficiency, runaway);
        }
        if (fit instanceof FittedRunner.Unfit unfit) {
            double most = Math.min(efficiency, unfit.reason().high().orElseThrow());
            double taken = assume.placeholder(
                    "/runner/measured-efficiency",
                    QuantityKind.RATIO,
                    0.999 * most,
                    0.5 * most,
                    most,
                    "assumed/efficiency-against-momentum");
            fit = FittedRunner.fit(known, 1, 1, Math.min(taken, 0.999 * most), runaway);
        }
        if (fit instanceof FittedRunner.Fitted fitted) {
            return fitted.runner();
        }
        throw new IllegalStateException("no runner: " + fit);
    }

    private static double runaway(RunnerType type, boolean against, Assume assume) {
        double factor = assume.value(
                "/runner/runaway-factor",
                QuantityKind.RATIO,
                type.runawayFactor(),
                LEAST_RUNAWAY,
                MOST_RUNAWAY,
                against ? "assumed/runaway-against-momentum" : "assumed/runner-kind",
                "handbooks on impulse turbines, from memory",
                against ? Assumption.Weight.PLACEHOLDER : Assumption.Weight.SOUND_DEFAULT);
        return Math.min(Math.max(factor, LEAST_RUNAWAY), MOST_RUNAWAY);
    }
}
