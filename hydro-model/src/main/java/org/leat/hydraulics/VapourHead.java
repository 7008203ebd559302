package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Pressure head at which water boils, above the atmosphere: {@code (pv − pa)/(ρ g)}, m, below 0: −10.1 m at sea level and 10 °C,
 * −7.5 m at 2500 m. With vapour pressure pv [Pa], air pressure pa [Pa], density ρ [kg/m³]. A margin of 2 m for dissolved air is
 * common practice.
 */
public final class VapourHead {

    private VapourHead() {}

    /** {@return pressure head, m} */
    public static double of(double vapourPressure, double airPressure, double density) {
        Physical.notNegative("vapourPressure", vapourPressure);
        Physical.positive("airPressure", airPressure);
        return (vapourPressure - airPressure) / (Physical.positive("density", density) * Gravity.STANDARD);
    }
}
