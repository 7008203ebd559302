package org.leat.plant.solve;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.solved.WaterSide;
import org.leat.turbine.ImpulseRunner;
import org.leat.turbine.RunnerParameters;

/** The runner under the jets of one nozzle set. */
public final class RunnerCharacteristic {

    private final ImpulseRunner runner;
    private final double flow;
    private final double jetVelocity;
    private final double radius;

    public RunnerCharacteristic(RunnerNumbers numbers, double density, WaterSide water) {
        this.radius = numbers.pitchDiameter() / 2;
        this.runner = new ImpulseRunner(new RunnerParameters(
                radius,
                numbers.bucketEfficiency(),
                numbers.returnFactor(),
                numbers.jetAngle(),
                numbers.lateEntry(),
                0,
                0,
                density));
        this.flow = water.flow();
        this.jetVelocity = water.jetVelocity();
    }

    /** By what both are computed from. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RunnerCharacteristic o
                && runner.parameters().equals(o.runner.parameters())
                && flow == o.flow
                && jetVelocity == o.jetVelocity;
    }

    @Override
    public int hashCode() {
        return Objects.hash(runner.parameters(), flow, jetVelocity);
    }

    /** {@return torque at the shaft, N·m} */
    public double torque(double speed) {
        return runner.torque(flow, jetVelocity, speed);
    }

    /** {@return speed at which torque is nil, rad/s} */
    public double runawaySpeed() {
        return runner.runawaySpeed(flow, jetVelocity);
    }

    /** {@return speed of most power, rad/s} */
    double bestSpeed() {
        return runner.bestSpeed(flow, jetVelocity);
    }

    /** {@return bucket speed over jet velocity; zero without a jet} */
    double speedRatio(double speed) {
        return jetVelocity > 0 ? speed * radius / jetVelocity : 0;
    }
}
