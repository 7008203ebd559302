package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Prospective short-circuit current of a battery: I = V_oc/(R_bank + R_loop), where R_bank = R_cell n/m for n cells in series
 * and m strings in parallel. The inductance of the loop is left out: it delays the peak by milliseconds and lowers it a little.
 *
 * <p>Source: Ohm's law. Held against a measurement: four golf-cart batteries in two 12 V strings gave 6960 A (Freitas, Home
 * Power 27, 1992, p. 26). The internal resistance of a data sheet, measured at small current, gives too little by up to a
 * third; breaking capacity is to be chosen well above. The arc of such a current kills; local codes go before.
 */
public final class BatteryFaultCurrent {

    private BatteryFaultCurrent() {}

    /**
     * {@return resistance of a bank, Ω}
     *
     * @param cellResistance of one cell, Ω
     * @param series cells from pole to pole
     * @param parallel strings
     */
    public static double bankResistance(double cellResistance, int series, int parallel) {
        Physical.positive("cell resistance", cellResistance);
        Physical.positive("cells in series", series);
        Physical.positive("strings", parallel);
        return cellResistance * series / parallel;
    }

    /**
     * {@return short-circuit current, A}
     *
     * @param openCircuitVoltage of the bank, V
     * @param bankResistance Ω
     * @param loopResistance from the poles to the fault and back, Ω
     */
    public static double at(double openCircuitVoltage, double bankResistance, double loopResistance) {
        Physical.positive("open-circuit voltage", openCircuitVoltage);
        Physical.positive("bank resistance", bankResistance);
        Physical.notNegative("loop resistance", loopResistance);
        return openCircuitVoltage / (bankResistance + loopResistance);
    }
}
