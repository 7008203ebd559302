package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Filling an empty line: slowly enough for the air to leave, at most 0.3 m/s.
 *
 * <p>Source: AWWA M51 and C605 (from memory; no text read states the figure).
 */
public final class Filling {

    /** Greatest velocity of the water that fills a line, m/s. */
    public static final double VELOCITY = 0.3;

    private Filling() {}

    /** {@return greatest flow to fill a bore with, m³/s} */
    public static double greatestFlow(double bore) {
        return VELOCITY * Math.PI / 4 * Physical.positive("bore", bore) * bore;
    }

    /** {@return least time to fill a length of a bore, s} */
    public static double leastTime(double length) {
        return Physical.positive("length", length) / VELOCITY;
    }
}
