package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Change of length of a pipe free to move: {@code ΔL = α L ΔT}, m, with the coefficient of expansion α [1/K], length L [m] and
 * the change of wall temperature ΔT [K]. Source: handbooks.
 */
public final class ThermalLengthChange {

    private ThermalLengthChange() {}

    /** {@return change of length, m; shorter where the temperature falls} */
    public static double free(double expansion, double length, double temperatureChange) {
        return Physical.notNegative("expansion", expansion)
                * Physical.positive("length", length)
                * Physical.finite("temperatureChange", temperatureChange);
    }
}
