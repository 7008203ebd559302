package org.leat.turbine;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * The runner whose best efficiency and runaway are those that were measured, or those usual for its type: bucket
 * efficiency and late entry of {@link ImpulseRunner} are the free numbers, everything else is given.
 */
public sealed interface FittedRunner {

    /**
     * Most runaway over best speed that {@link ImpulseRunner} can show [1]: momentum alone.
     */
    double MOST_RUNAWAY_FACTOR = 2;

    /** Least runaway over best speed that it is fitted to [1]; its limit is the fourth root of five, 1.495. */
    double LEAST_RUNAWAY_FACTOR = 1.55;

    /**
     * A runner that shows both numbers.
     *
     * @param runner ready to be asked
     */
    record Fitted(ImpulseRunner runner) implements FittedRunner {}

    /**
     * No such runner: the numbers contradict momentum.
     *
     * @param reason which number, and the range in which it could be met
     */
    record Unfit(Answer.Outside reason) implements FittedRunner {}

    /** {@return the runner usual for a type, friction and windage inside its efficiency} */
    static ImpulseRunner usual(RunnerType type, double pitchRadius, double density) {
        RunnerParameters known =
                new RunnerParameters(pitchRadius, 1, type.returnFactor(), type.jetAngle(), 0, 0, 0, density);
        FittedRunner fit = fit(known, 1, 1, type.efficiency(), type.runawayFactor());
        if (fit instanceof Fitted fitted) {
            return fitted.runner();
        }
        throw new IllegalStateException("usual numbers of " + type + " contradict momentum: " + fit);
    }

    /**
     * {@return the runner with the measured numbers, or why there is none}
     *
     * @param known all but bucket efficiency and late entry, which are found
     * @param flow at which they were measured [m3/s]
     * @param jetVelocity at which they were measured [m/s]
     * @param bestEfficiency shaft power over jet power at best speed [1]
     * @param runawayFactor runaway over best speed [1]
     */
    static FittedRunner fit(
            RunnerParameters known, double flow, double jetVelocity, double bestEfficiency, double runawayFactor) {
        Physical.positive("flow", flow);
        Physical.positive("jetVelocity", jetVelocity);
        Physical.positive("bestEfficiency", bestEfficiency);
        if (!(runawayFactor >= LEAST_RUNAWAY_FACTOR && runawayFactor <= MOST_RUNAWAY_FACTOR)) {
            return new Unfit(outside(runawayFactor, MOST_RUNAWAY_FACTOR));
        }
        RunnerFit fit = new RunnerFit(known, flow, jetVelocity, bestEfficiency);
        double ratio = fit.ratio(runawayFactor);
        double lateEntry = fit.lateEntry(ratio);
        double bucketEfficiency = fit.bucketEfficiency(ratio);
        if (bucketEfficiency > 1 + 1e-12) {
            ImpulseRunner perfect =
                    new ImpulseRunner(known.withLateEntry(lateEntry).withBucketEfficiency(1));
            double most = perfect.efficiency(flow, jetVelocity, perfect.bestSpeed(flow, jetVelocity));
            return new Unfit(Answer.outside("impulse runner", "bestEfficiency", bestEfficiency, 0, most, "1"));
        }
        ImpulseRunner runner =
                new ImpulseRunner(known.withLateEntry(lateEntry).withBucketEfficiency(Math.min(1, bucketEfficiency)));
        double shown = runner.runawaySpeed(flow, jetVelocity) / runner.bestSpeed(flow, jetVelocity);
        if (shown < runawayFactor - 1e-6) {
            return new Unfit(outside(runawayFactor, shown));
        }
        return new Fitted(runner);
    }

    private static Answer.Outside outside(double runawayFactor, double most) {
        return Answer.outside("impulse runner", "runawayFactor", runawayFactor, LEAST_RUNAWAY_FACTOR, most, "1");
    }
}
