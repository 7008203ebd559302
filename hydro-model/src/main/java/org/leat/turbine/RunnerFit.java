package org.leat.turbine;

/**
 * Bucket efficiency and late entry of {@link FittedRunner}, from three balances at best speed ratio {@code x} and runaway
 * {@code r x}, {@code S} stall torque of the water, {@code M = S m x^4}, {@code D} windage torque at best speed, {@code P}
 * shaft power, {@code w} angular speed at ratio one:
 *
 * <pre>
 * best speed   S (1 - 2 x) - 5 M - Tb - 3 D = 0
 * power        S (1 - x) - M - Tb - D = P/(x w)
 * runaway      S (1 - r x) - r^4 M - Tb - r^2 D = 0
 * </pre>
 *
 * The first two give {@code S} and {@code M} for any {@code x}; the third is met by halving.
 */
final class RunnerFit {

    private static final int STEPS = 60;

    private final double bearing;
    /** Angular speed at ratio one [rad/s]. */
    private final double speed;
    /** Windage torque at ratio one [N m]. */
    private final double drag;
    /** Shaft power at best speed [W]. */
    private final double power;
    /** Stall torque of the water on perfect buckets [N m]. */
    private final double perfect;

    RunnerFit(RunnerParameters known, double flow, double jetVelocity, double bestEfficiency) {
        ImpulseRunner runner = new ImpulseRunner(known.withBucketEfficiency(1).withLateEntry(0));
        this.bearing = known.bearingTorque();
        this.speed = 2 * runner.bestSpeedRatio() * jetVelocity / known.pitchRadius();
        this.drag = known.windage() * speed * speed;
        this.power = bestEfficiency * runner.jetPower(flow, jetVelocity);
        this.perfect = runner.waterTorque(flow, jetVelocity, 0);
    }

    /** Greatest best ratio: the one without late entry. */
    double ratioWithoutLateEntry() {
        double low = 0;
        double high = 0.5;
        for (int i = 0; i < STEPS; i++) {
            double middle = 0.5 * (low + high);
            if (late(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Best ratio at which runaway is where it was measured; the greatest where there is none. */
    double ratio(double runawayFactor) {
        double low = 0;
        double high = ratioWithoutLateEntry();
        for (int i = 0; i < STEPS; i++) {
            double middle = 0.5 * (low + high);
            if (leftAtRunaway(middle, runawayFactor) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Torque left at the measured runaway [N m]; negative: it comes earlier. */
    double leftAtRunaway(double x, double r) {
        return stall(x) * (1 - r * x) - Math.pow(r, 4) * late(x) - bearing - r * r * drag * x * x;
    }

    double bucketEfficiency(double x) {
        return stall(x) / perfect;
    }

    double lateEntry(double x) {
        return Math.max(0, late(x) / (stall(x) * Math.pow(x, 4)));
    }

    private double stall(double x) {
        return 5 * (power / (x * speed) + 0.8 * bearing + 0.4 * drag * x * x) / (4 - 3 * x);
    }

    private double late(double x) {
        return (stall(x) * (1 - 2 * x) - bearing - 3 * drag * x * x) / 5;
    }
}
