package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Rise of head when the <em>flow</em> falls linearly to nothing in the closing time, without friction:
 * {@code ΔH = 2 L V/(g Tc)}, m, with length L [m], velocity V [m/s], closing time Tc [s].
 *
 * <p>Source: Michaud (1878); Wylie and Streeter. Exact from Tc = 2 L/a on; a faster stop is {@link Joukowsky}'s and gives
 * {@link Answer.Outside}. A valve or needle whose <em>area</em> falls linearly makes another peak: {@link Allievi},
 * {@link Characteristics}.
 */
public final class Michaud {

    private Michaud() {}

    /** {@return rise of head, m} */
    public static Answer head(double length, double velocity, double closingTime, double waveSpeed) {
        Physical.positive("length", length);
        Physical.notNegative("velocity", velocity);
        Physical.notNegative("closingTime", closingTime);
        double returnTime = 2 * length / Physical.positive("waveSpeed", waveSpeed);
        if (closingTime < returnTime) {
            return Answer.below("Michaud", "closingTime", closingTime, returnTime, "s");
        }
        return Answer.of(2 * length * velocity / (Gravity.STANDARD * closingTime));
    }
}
