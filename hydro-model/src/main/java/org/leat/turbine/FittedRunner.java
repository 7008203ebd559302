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
            return new Unfit(new Answer.Outside(
                    "impulse runner", "runawayFactor", runawayFactor, LEAST_RUNAWAY_FACTOR, MOST_RUNAWAY_FACTOR, "1"));
        }
        RunnerFit search = new RunnerFit(known, flow, jetVelocity);
        double low = 0;
        double high = 1e4;
        for (int i = 0; i < 100; i++) {
            double middle = i < 50 ? Math.sqrt(Math.max(low, 1e-9) * high) : 0.5 * (low + high);
            if (search.runawayFactor(middle, bestEfficiency) > runawayFactor) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double lateEntry = high < 1e-8 ? 0 : high;
        double bucketEfficiency = search.bucketEfficiency(lateEntry, bestEfficiency);
        if (bucketEfficiency > 1) {
            double most = search.bestEfficiency(lateEntry, 1);
            return new Unfit(new Answer.Outside("impulse runner", "bestEfficiency", bestEfficiency, 0, most, "1"));
        }
        return new Fitted(search.runner(lateEntry, bucketEfficiency));
    }
}
