package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Pitch diameter over jet diameter.
 *
 * <p>Both [m]; the jet, not the bore. Wheels of split double buckets: 9 to 12 for good efficiency, down to 6 with loss;
 * oblique jets down to 4. Valid for all physical inputs. Source of the limits: textbooks, as Nechleba, Hydraulic
 * Turbines (from memory).
 */
public final class PitchToJetRatio {

    private PitchToJetRatio() {}

    /** Least ratio for good efficiency of split double buckets [1]. */
    public static final double GOOD = 9;

    /** {@return pitch diameter over jet diameter [1]} */
    public static double of(double pitchDiameter, double jetDiameter) {
        return Physical.positive("pitchDiameter", pitchDiameter) / Physical.positive("jetDiameter", jetDiameter);
    }
}
