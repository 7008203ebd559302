package org.leat.turbine;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Fewest buckets that let no jet water pass between them.
 *
 * <p>The outermost water of the jet runs at {@code y = R + d/2} from the axis and is inside the tip circle for the angle
 * {@code 2 psi}, {@code cos psi = y/Rt}. What slips past the next bucket's tip must catch the one before within that
 * angle: spacing at most {@code 2 (psi - phi (Rt/R) sin psi)}, number at least {@code pi/(psi - phi (Rt/R) sin psi)}.
 *
 * <p>Symbols: {@code R} pitch radius, {@code Rt} tip radius, {@code d} jet diameter [m]; {@code phi} bucket speed over
 * jet velocity [1]. Outside its range where the tips do not reach over the jet, or turn too fast for any number.
 * Source: kinematics of the jet's last particle, as Nechleba, Hydraulic Turbines (from memory); at usual
 * proportions up to a fifth below {@link TaygunBucketCount}, which has that reserve.
 */
public final class LeastBucketCount {

    private LeastBucketCount() {}

    private static final String LAW = "least bucket count";

    /** {@return the least number of buckets, whole [1], or what is outside} */
    public static Answer of(double pitchRadius, double tipRadius, double jetDiameter, double speedRatio) {
        Physical.positive("pitchRadius", pitchRadius);
        Physical.positive("tipRadius", tipRadius);
        Physical.positive("jetDiameter", jetDiameter);
        Physical.notNegative("speedRatio", speedRatio);
        double outermost = pitchRadius + 0.5 * jetDiameter;
        if (tipRadius <= outermost) {
            return Answer.below(LAW, "tipRadius", tipRadius, outermost, "m");
        }
        double psi = Math.acos(outermost / tipRadius);
        double halfChord = tipRadius / pitchRadius * Math.sin(psi);
        double halfSpacing = psi - speedRatio * halfChord;
        if (halfSpacing <= 0) {
            return Answer.outside(LAW, "speedRatio", speedRatio, 0, psi / halfChord, "1");
        }
        return Answer.of(Math.ceil(Math.PI / halfSpacing));
    }
}
