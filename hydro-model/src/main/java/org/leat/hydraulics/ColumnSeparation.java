package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * The blow of a water column that parts at the nozzles after an instant stop and rejoins. With tank level Hr, vapour head hv at the
 * nozzles (elevation and pressure head at which water boils), surge {@code J = a ΔV/g} [m] and {@code m = J/(Hr − hv)}:
 *
 * <pre>
 * m ≤ 1   one level pipe stays whole: Hr + J is the highest
 * m &gt; 1   after the first cavity: hv + (2n + 1 − m)(Hr − hv),  n = ⌈m⌉
 * m ≤ 2   no blow exceeds Hr + J + 2 (Hr − hv)
 * </pre>
 *
 * <p>Range: one pipe, level or falling evenly, no friction (friction lowers every blow), a cavity at the nozzles only. For m
 * above 2 the last line is no bound: pulses go on adding, after forty periods to twice it. A pipe that falls parts up the run
 * already for m below 1, where the head is least; there m is taken with the least margin along the line. What is outside is for
 * {@link RejoiningColumn}. Source: the pulse of short duration of Simpson and Wylie, J. Hydr. Eng. 117 (1991) 1310; the bound is
 * our own, by exact waves (tests).
 */
public final class ColumnSeparation {

    private static final String BLOW = "blow after the first cavity of a parted column";
    private static final String BOUND = "bound of all blows of a parted column";
    private static final double MOST = 2;

    private ColumnSeparation() {}

    /**
     * {@return m, the surge over what the head can fall before the water boils}
     *
     * @param tankHead Hr, m
     * @param surge J, m
     * @param vapourHead hv, m, below the tank level
     */
    public static double ratio(double tankHead, double surge, double vapourHead) {
        return Physical.notNegative("surge", surge) / margin(tankHead, vapourHead);
    }

    /** {@return head of the blow after the first cavity, m} {@link Answer.Outside} for m of 1 and below: there is none. */
    public static Answer afterFirstCavity(double tankHead, double surge, double vapourHead) {
        double m = ratio(tankHead, surge, vapourHead);
        return m <= 1
                ? Answer.below(BLOW, "surge over head", m, 1, "1")
                : Answer.of(vapourHead + (2 * Math.ceil(m) + 1 - m) * margin(tankHead, vapourHead));
    }

    /** {@return head that no blow exceeds in one level pipe, m} {@link Answer.Outside} for m above 2. */
    public static Answer bound(double tankHead, double surge, double vapourHead) {
        return onSlope(tankHead, surge, vapourHead, margin(tankHead, vapourHead));
    }

    /**
     * {@return head that no blow exceeds in one pipe that falls evenly, m} {@link Answer.Outside} where the surge is more than
     * twice the least margin.
     *
     * @param leastMargin least of tank level less elevation less vapour pressure head along the line, m: as a rule just below the
     *     intake
     */
    public static Answer onSlope(double tankHead, double surge, double vapourHead, double leastMargin) {
        double m = Physical.notNegative("surge", surge) / Physical.positive("leastMargin", leastMargin);
        if (m > MOST) {
            return Answer.outside(BOUND, "surge over least head", m, 0, MOST, "1");
        }
        double whole = tankHead + surge;
        return Answer.of(m <= 1 ? whole : whole + 2 * margin(tankHead, vapourHead));
    }

    private static double margin(double tankHead, double vapourHead) {
        return Physical.positive("tankHead less vapourHead", tankHead - vapourHead);
    }
}
