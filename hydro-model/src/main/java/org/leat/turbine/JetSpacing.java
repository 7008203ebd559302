package org.leat.turbine;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Angle between two jets that lets a bucket empty before the second jet meets it.
 *
 * <p>{@code angle = (2 pi/z + phi s/R)/(1 - phi)}: a bucket is fed until it has caught the water cut off by the next
 * one, {@code (2 pi/z)/(1 - phi)}; then the last of it runs the length {@code s} over the bucket at the relative speed.
 *
 * <p>Symbols: {@code z} buckets; {@code phi} bucket speed over jet velocity [1]; {@code s} water's path over the bucket
 * [m], about two jet diameters; {@code R} pitch radius [m]. Loss of relative speed is left out. Range: {@code phi} below
 * 1, else a bucket never empties: outside. Source: kinematics, ours; it gives 50 to 60 degrees at usual proportions,
 * where six jets at 60 degrees are common practice.
 */
public final class JetSpacing {

    private JetSpacing() {}

    /** {@return least angle between neighbouring jets [rad], or what is outside} */
    public static Answer least(int buckets, double speedRatio, double pathOverBucket, double pitchRadius) {
        Physical.positive("buckets", buckets);
        Physical.notNegative("speedRatio", speedRatio);
        Physical.positive("pathOverBucket", pathOverBucket);
        Physical.positive("pitchRadius", pitchRadius);
        if (speedRatio >= 1) {
            return Answer.outside("jet spacing", "speedRatio", speedRatio, 0, 1, "1");
        }
        return Answer.of((2 * Math.PI / buckets + speedRatio * pathOverBucket / pitchRadius) / (1 - speedRatio));
    }

    /** {@return water's path over a bucket [m] to assume for a jet diameter [m]: common practice} */
    public static double usualPath(double jetDiameter) {
        return 2 * Physical.positive("jetDiameter", jetDiameter);
    }
}
