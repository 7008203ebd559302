package org.leat.turbine;

/** The two numbers of {@link FittedRunner} as functions of each other. */
final class RunnerFit {

    private final RunnerParameters known;
    private final double flow;
    private final double jetVelocity;

    RunnerFit(RunnerParameters known, double flow, double jetVelocity) {
        this.known = known;
        this.flow = flow;
        this.jetVelocity = jetVelocity;
    }

    ImpulseRunner runner(double lateEntry, double bucketEfficiency) {
        return new ImpulseRunner(known.withLateEntry(lateEntry).withBucketEfficiency(bucketEfficiency));
    }

    double bestEfficiency(double lateEntry, double bucketEfficiency) {
        ImpulseRunner runner = runner(lateEntry, bucketEfficiency);
        return runner.efficiency(flow, jetVelocity, runner.bestSpeed(flow, jetVelocity));
    }

    /** Bucket efficiency for a shaft efficiency; 2 where even a perfect bucket would not do. */
    double bucketEfficiency(double lateEntry, double bestEfficiency) {
        if (bestEfficiency(lateEntry, 1) < bestEfficiency) {
            return 2;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (bestEfficiency(lateEntry, middle) < bestEfficiency) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    double runawayFactor(double lateEntry, double bestEfficiency) {
        ImpulseRunner runner = runner(lateEntry, Math.min(1, bucketEfficiency(lateEntry, bestEfficiency)));
        double best = runner.bestSpeed(flow, jetVelocity);
        return best > 0 ? runner.runawaySpeed(flow, jetVelocity) / best : 0;
    }
}
