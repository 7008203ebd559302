package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.solved.WaterSide.Jet;
import org.leat.turbine.BucketProportions;
import org.leat.turbine.RunnerType;
import org.leat.turbine.TailwaterClearance;
import org.leat.turbine.TaygunBucketCount;

/**
 * A jet against the size of the wheel it strikes.
 *
 * @param runner the wheel
 * @param diameter of the jet, m
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record JetOnRunner(RunnerNumbers runner, double diameter) {

    /** {@return the thickest jet of one nozzle set} */
    public static JetOnRunner of(PlantNumbers numbers, Running running) {
        return new JetOnRunner(
                numbers.runner(),
                running.water().jets().stream().mapToDouble(Jet::diameter).max().orElseThrow());
    }

    static JetOnRunner thickest(PlantNumbers numbers, Iterable<Running> running) {
        JetOnRunner thickest = new JetOnRunner(numbers.runner(), 0);
        for (Running set : running) {
            JetOnRunner jet = of(numbers, set);
            thickest = jet.diameter() > thickest.diameter() ? jet : thickest;
        }
        return thickest;
    }

    /** {@return pitch diameter over jet diameter} */
    public double pitchRatio() {
        return runner.pitchDiameter() / diameter;
    }

    /** {@return the least pitch diameter over jet diameter that is usual for a wheel of this kind} */
    public double leastUsualPitchRatio() {
        return RunnerType.valueOf(runner.kind().name()).pitchToJetRatio().low();
    }

    /** {@return usual number of buckets before rounding, see {@link TaygunBucketCount}} */
    public double usualBuckets() {
        return TaygunBucketCount.of(runner.pitchDiameter(), diameter);
    }

    /** {@return usual number of buckets} */
    public int usualWholeBuckets() {
        return TaygunBucketCount.whole(runner.pitchDiameter(), diameter);
    }

    /** {@return greatest length of a bucket that is usual for the jet, m} */
    public double usualBucketLength() {
        return BucketProportions.USUAL_LENGTH.high() * diameter;
    }

    /** {@return least clear height over tail water, m, see {@link TailwaterClearance}} Length of a bucket in m. */
    public double leastTailwaterClearance(double bucketLength) {
        return TailwaterClearance.least(diameter, bucketLength);
    }
}
