package org.leat.electrics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Least area of a conductor that stands a short circuit until the device clears it: S = I √t / k, no heat given off. Range:
 * t ≤ 5 s; beyond it heat flows away and the formula is no longer the standard's.
 *
 * <p>k in A·√s/mm² (IEC 60364-4-43:2008, table 43A, from memory; 115 read): copper in PVC 115 (70 to 160 °C, up to 300 mm²),
 * copper in XLPE or EPR 143 (90 to 250 °C); aluminium 76 and 94. Below 0.1 s the current's asymmetry counts and the
 * let-through I²t of the device's maker goes before.
 *
 * <p>Symbols: I rms current, A; t clearing time, s; S area, m².
 */
public final class AdiabaticHeating {

    /** k of copper in PVC, A·√s/m². */
    public static final double COPPER_PVC = 115e6;

    /** k of copper in XLPE or EPR, A·√s/m². */
    public static final double COPPER_XLPE = 143e6;

    /** k of aluminium in PVC, A·√s/m². */
    public static final double ALUMINIUM_PVC = 76e6;

    /** k of aluminium in XLPE or EPR, A·√s/m². */
    public static final double ALUMINIUM_XLPE = 94e6;

    private AdiabaticHeating() {}

    /** {@return least area, m²} */
    public static Answer leastArea(double current, double clearingTime, double k) {
        Physical.notNegative("short-circuit current", current);
        Physical.positive("clearing time", clearingTime);
        Physical.positive("k", k);
        return clearingTime > 5
                ? Answer.outside("IEC 60364-4-43 adiabatic heating", "clearing time", clearingTime, 0, 5, "s")
                : Answer.of(current * Math.sqrt(clearingTime) / k);
    }

    /** {@return longest time an area, m², stands a current, s} Above 5 s there is no answer: it is longer than the range. */
    public static Answer longestTime(double current, double area, double k) {
        Physical.positive("short-circuit current", current);
        Physical.positive("area", area);
        Physical.positive("k", k);
        double time = Math.pow(k * area / current, 2);
        return time > 5
                ? Answer.outside("IEC 60364-4-43 adiabatic heating", "clearing time", time, 0, 5, "s")
                : Answer.of(time);
    }
}
