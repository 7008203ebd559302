package org.leat.plant.duties;

import org.leat.design.RunnerKind;
import org.leat.law.Answer;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.solved.WaterSide.Jet;
import org.leat.turbine.JetSpacing;
import org.leat.turbine.RunnerType;

/** What jets a runner takes: how many, and how thick. */
public final class JetLimits {

    private JetLimits() {}

    /**
     * {@return how many jets of a running set have room, spread evenly round the runner; at least one, at most what its kind
     * takes} Outside the range of {@link JetSpacing} the reason.
     *
     * @param buckets how many the runner has
     */
    public static Answer jets(Running running, RunnerNumbers runner, int buckets) {
        double jet =
                running.water().jets().stream().mapToDouble(Jet::diameter).max().orElseThrow();
        Answer spacing = JetSpacing.least(
                buckets, running.operatingPoint().speedRatio(), JetSpacing.usualPath(jet), runner.pitchDiameter() / 2);
        return spacing instanceof Answer.Value angle
                ? Answer.of(Math.max(
                        1, Math.min(type(runner.kind()).maxJets(), Math.floor(2 * Math.PI / angle.value() + 1e-9))))
                : spacing;
    }

    /** {@return the least width of a bucket over the diameter of its jet} */
    public static double leastBucketWidth(RunnerKind kind) {
        return type(kind).bucketWidthRatio().low();
    }

    /** {@return the greatest width of a bucket over the diameter of its jet} */
    public static double greatestBucketWidth(RunnerKind kind) {
        return type(kind).bucketWidthRatio().high();
    }

    private static RunnerType type(RunnerKind kind) {
        return RunnerType.valueOf(kind.name());
    }
}
