package org.leat.turbine;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Factor a1 of {@link BearingLife} for a reliability other than 90 %: 95 % 0.64, 96 % 0.55, 97 % 0.47, 98 % 0.37,
 * 99 % 0.25.
 *
 * <p>Range: the tabled reliabilities, between them in a straight line; below 90 and above 99 % outside. Source: ISO
 * 281:2007, table 12 (the issue of 1990 had 0.62 at 95 % and 0.21 at 99 %).
 */
public final class LifeReliability {

    private LifeReliability() {}

    private static final double[] RELIABILITY = {0.90, 0.95, 0.96, 0.97, 0.98, 0.99};
    private static final double[] FACTOR = {1, 0.64, 0.55, 0.47, 0.37, 0.25};

    /** {@return a1 [1], or what is outside} */
    public static Answer factor(double reliability) {
        Physical.within("reliability", reliability, 0, 1);
        int last = RELIABILITY.length - 1;
        if (reliability < RELIABILITY[0] || reliability > RELIABILITY[last]) {
            return Answer.outside(
                    "ISO 281 table 12", "reliability", reliability, RELIABILITY[0], RELIABILITY[last], "1");
        }
        int i = 1;
        while (reliability > RELIABILITY[i]) {
            i++;
        }
        double along = (reliability - RELIABILITY[i - 1]) / (RELIABILITY[i] - RELIABILITY[i - 1]);
        return Answer.of(FACTOR[i - 1] + along * (FACTOR[i] - FACTOR[i - 1]));
    }
}
