package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Resistance of annealed copper against temperature: R2 = R1 (234.5 + T2)/(234.5 + T1), T in °C. Range −50 to 250 °C
 * (annealed copper is straight to better than 1 % there; outside it an argument is refused).
 *
 * <p>Source: IEC 60028 gives 0.00393 /K at 20 °C, whence 234.5; IEC 60034-1 uses 235 for the resistance method (from
 * memory); the difference is below 0.1 % at 100 °C.
 */
public final class CopperResistance {

    private CopperResistance() {}

    /**
     * {@return resistance at the second temperature, Ω}
     *
     * @param resistance at the first temperature, Ω
     * @param from first temperature, °C
     * @param to second temperature, °C
     */
    public static double at(double resistance, double from, double to) {
        Physical.within("copper temperature", from, -50, 250);
        Physical.within("copper temperature", to, -50, 250);
        return resistance * (234.5 + to) / (234.5 + from);
    }
}
