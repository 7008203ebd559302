package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Bar rack: {@code h = K V²/(2g)}, {@code K = β (s/b)^(4/3) sin α / (1 - c)²}, s bar across the flow m, b clear gap m, α slope of
 * the rack against the horizontal, V velocity of approach m/s (not between the bars), c blocked share. β 2.42 for sharp
 * rectangular bars, 1.83 with a rounded nose, 1.79 round. Kirschmer, Mitt. Hydraul. Inst. TH München 1, 1926, for the clean rack;
 * the term in c is common practice. Outside where all of it is blocked.
 */
public final class KirschmerRack {

    /** β of sharp rectangular bars. */
    public static final double SHARP = 2.42;

    /** β of bars with a rounded nose. */
    public static final double ROUNDED_NOSE = 1.83;

    /** β of round bars. */
    public static final double ROUND = 1.79;

    private KirschmerRack() {}

    /** {@return K on the velocity of approach, 1} */
    public static Answer lossCoefficient(double beta, double bar, double gap, double slope, double blockedShare) {
        if (!(blockedShare >= 0 && blockedShare < 1)) {
            return Answer.outside("Kirschmer rack", "blockedShare", blockedShare, 0, 1, "1");
        }
        Physical.within("slope", slope, 0, Math.PI / 2);
        double ratio = Physical.positive("bar", bar) / Physical.positive("gap", gap);
        double open = 1 - blockedShare;
        return Answer.of(Physical.positive("beta", beta) * ratio * Math.cbrt(ratio) * Math.sin(slope) / (open * open));
    }

    /** {@return head lost at a clean rack, m; velocity of approach in m/s} */
    public static double headLoss(double beta, double bar, double gap, double slope, double velocity) {
        double head = Physical.notNegative("velocity", velocity) * velocity / (2 * Gravity.STANDARD);
        return lossCoefficient(beta, bar, gap, slope, 0).orThrow() * head;
    }
}
