package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Voltage behind a bridge whose alternator is unloaded: V = √2 E_LL n/n0, the peak of the line voltage at the speed it has run
 * up to; the two diode drops are left out, which is on the safe side. E_LL is the open-circuit line voltage, rms, at speed n0.
 *
 * <p>An empty capacitor connected to a spinning machine sees up to 1.6 times as much, a battery that opens under load 1.26
 * times for a moment (circuit simulations). Source: definition of the peak of a sine.
 */
public final class OpenCircuitBus {

    private OpenCircuitBus() {}

    /**
     * {@return d.c. voltage without load, V}
     *
     * @param lineVoltage E_LL, rms, V
     * @param speedRatio speed over the speed at which the line voltage is given
     */
    public static double voltage(double lineVoltage, double speedRatio) {
        Physical.notNegative("line voltage", lineVoltage);
        Physical.notNegative("speed ratio", speedRatio);
        return Math.sqrt(2) * lineVoltage * speedRatio;
    }
}
