package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Forward voltage of one diode as a straight line, V = V_F0 + r_d i, to be fitted at the working current (a line through
 * the data sheet's curve at half and full current; not at milliamperes, where the current comes out up to 2 % low).
 *
 * @param threshold V_F0, V
 * @param slope r_d, Ω
 */
public record DiodeLine(double threshold, double slope) {
    public DiodeLine {
        Physical.notNegative("diode threshold", threshold);
        Physical.notNegative("diode slope resistance", slope);
    }

    /**
     * {@return the line through two points of a data sheet's curve}
     *
     * @param current1 A
     * @param voltage1 V
     * @param current2 A, above the first
     * @param voltage2 V
     */
    public static DiodeLine through(double current1, double voltage1, double current2, double voltage2) {
        double slope = (voltage2 - voltage1) / (current2 - current1);
        return new DiodeLine(voltage1 - slope * current1, slope);
    }
}
