package org.leat.electrics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Voltage at an inverter that draws a constant power P through battery and cable: V = V_oc/2 + √(V_oc²/4 − R P). Drawn harder than
 * P = V_oc²/(4 R) no voltage satisfies it: the bus collapses, and there is no answer.
 *
 * <p>Source: Ohm's law and energy balance. R is the resistance of battery and both cores, Ω.
 */
public final class VoltageSag {

    private VoltageSag() {}

    /**
     * {@return voltage at the inverter, V}
     *
     * @param openCircuitVoltage of the battery at its state of charge, V
     * @param resistance of battery and cable, Ω
     * @param inputPower of the inverter, W
     */
    public static Answer underPower(double openCircuitVoltage, double resistance, double inputPower) {
        Physical.positive("open-circuit voltage", openCircuitVoltage);
        Physical.positive("resistance", resistance);
        Physical.notNegative("input power", inputPower);
        double half = openCircuitVoltage / 2;
        double greatest = half * half / resistance;
        return inputPower > greatest
                ? Answer.outside("voltage sag", "inverter input power", inputPower, 0, greatest, "W")
                : Answer.of(half + Math.sqrt(half * half - resistance * inputPower));
    }

    /** {@return voltage, V, under a current, A, drawn from the battery; may fall below nil where no battery could give it} */
    public static double underCurrent(double openCircuitVoltage, double resistance, double current) {
        Physical.positive("open-circuit voltage", openCircuitVoltage);
        Physical.notNegative("resistance", resistance);
        return openCircuitVoltage - resistance * Physical.finite("current", current);
    }
}
