package org.leat.electrics;

import org.leat.law.Physical;

/**
 * What a resistive element takes at another voltage than its own: P = P_n (V/V_n)², R = V_n²/P_n, I = V/R. A heating element of
 * 2 kW made for 230 V takes 87 W at 48 V. Cold it takes more than hot: R_hot = R_cold (1 + α ΔT), with α from 0.0001 /K to
 * 0.0004 /K for heating alloys [common practice] and 0.0045 /K for the tungsten of lamps.
 *
 * <p>Source: Ohm's law. An element has its rated power hot.
 */
public final class DumpElement {

    private DumpElement() {}

    /** {@return resistance at working temperature, Ω, of an element rated in W at V} */
    public static double resistance(double ratedPower, double ratedVoltage) {
        Physical.positive("rated power", ratedPower);
        Physical.positive("rated voltage", ratedVoltage);
        return ratedVoltage * ratedVoltage / ratedPower;
    }

    /** {@return power of a resistance, Ω, at a voltage, V, in W} */
    public static double power(double resistance, double voltage) {
        return voltage * current(resistance, voltage);
    }

    /** {@return current of a resistance, Ω, at a voltage, V, in A} */
    public static double current(double resistance, double voltage) {
        Physical.positive("resistance", resistance);
        Physical.notNegative("voltage", voltage);
        return voltage / resistance;
    }

    /**
     * {@return resistance hot, Ω}
     *
     * @param cold resistance, Ω
     * @param coefficient α, 1/K
     * @param warming from cold to hot, K
     */
    public static double hot(double cold, double coefficient, double warming) {
        Physical.positive("resistance", cold);
        Physical.finite("temperature coefficient", coefficient);
        Physical.notNegative("warming", warming);
        return Physical.positive("hot resistance", cold * (1 + coefficient * warming));
    }
}
