package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Thin-plate rectangular notch: {@code Q = (α + β h/p) (2/3) √(2g) (b + kb) (h + 0.001)^1.5}, h head above the crest m, p crest
 * above the bed m, b width of the notch m; α, β and kb against b/B, B width of the channel m, straight between the tabled
 * points. Kindsvater and Carter, in ISO 1438:2017, clause 9; table from memory.
 *
 * <p>Range: h from 0.03 m, h/p to 2.5, b from 0.15 m, p from 0.1 m; narrower than the channel by nothing or by at least 0.2 m.
 */
public final class KindsvaterCarter {

    /** Relative uncertainty of the coefficient at 95 % for h/p up to 1, 1; ISO 1438, uncertainty clause, from memory. */
    public static final double COEFFICIENT_UNCERTAINTY = 0.015;

    private static final String LAW = "ISO 1438 rectangular notch";
    private static final double HEAD_CORRECTION = 0.001;

    private static final double[] WIDTH_SHARE = {0, 0.2, 0.4, 0.6, 0.7, 0.8, 0.9, 1};
    private static final double[] ALPHA = {0.587, 0.588, 0.591, 0.593, 0.595, 0.597, 0.599, 0.602};
    private static final double[] BETA = {-0.0023, -0.0018, 0.0058, 0.018, 0.030, 0.045, 0.064, 0.075};
    private static final double[] KB_SHARE = {0, 0.2, 0.4, 0.6, 0.8, 1};
    private static final double[] KB = {0.0024, 0.0024, 0.0027, 0.0037, 0.0043, -0.0009};

    private KindsvaterCarter() {}

    /** {@return flow with coefficients given, m³/s; lengths in m; no range is judged} */
    public static double flow(double width, double head, double crestHeight, double alpha, double beta, double kb) {
        Physical.notNegative("head", head);
        double coefficient = alpha + beta * head / Physical.positive("crestHeight", crestHeight);
        double effective = head + HEAD_CORRECTION;
        return coefficient
                * (2.0 / 3)
                * Math.sqrt(2 * Gravity.STANDARD)
                * (Physical.positive("width", width) + kb)
                * effective
                * Math.sqrt(effective);
    }

    /**
     * {@return flow, m³/s; or which measure is outside the standard}
     *
     * @param width b, m
     * @param head h, m
     * @param crestHeight p, m
     * @param channelWidth B, m, at least b
     */
    public static Answer flow(double width, double head, double crestHeight, double channelWidth) {
        if (!(head >= 0.03)) {
            return Answer.below(LAW, "head", head, 0.03, "m");
        }
        if (!(width >= 0.15)) {
            return Answer.below(LAW, "width", width, 0.15, "m");
        }
        if (!(crestHeight >= 0.1)) {
            return Answer.below(LAW, "crestHeight", crestHeight, 0.1, "m");
        }
        if (!(head / crestHeight <= 2.5)) {
            return Answer.outside(LAW, "head/crestHeight", head / crestHeight, 0, 2.5, "1");
        }
        double share = Physical.within("width/channelWidth", width / channelWidth, 0, 1);
        if (share < 1 && channelWidth - width < 0.2) {
            return Answer.below(LAW, "channelWidth - width", channelWidth - width, 0.2, "m");
        }
        double alpha = between(WIDTH_SHARE, ALPHA, share);
        double beta = between(WIDTH_SHARE, BETA, share);
        return Answer.of(flow(width, head, crestHeight, alpha, beta, between(KB_SHARE, KB, share)));
    }

    private static double between(double[] x, double[] y, double at) {
        int i = 1;
        while (x[i] < at) {
            i++;
        }
        return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
    }

    /** {@return relative uncertainty of the flow, {@code √(uC² + ub² + (1.5 uh)²)}; all relative and at 95 %, 1} */
    public static double relativeUncertainty(double coefficient, double width, double head) {
        return Uncertainty.rootSumSquare(coefficient, width, 1.5 * head);
    }
}
