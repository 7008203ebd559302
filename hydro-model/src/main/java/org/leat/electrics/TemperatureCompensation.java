package org.leat.electrics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Charge voltage of a bank at another temperature than 25 °C: V = n (V_25 + c (T − 298.15 K)), c being −3 to −5 mV/K a cell for
 * lead and nil for lithium. Range −20 to 50 °C; a battery that is hotter or colder must not be charged by it.
 *
 * <p>Source: a battery education text (2.30 V a cell, 2.27 V at 35 °C, 2.33 V at 15 °C); IEEE 1361 −4 to −5 mV/K (from memory).
 */
public final class TemperatureCompensation {

    private TemperatureCompensation() {}

    /**
     * {@return charge voltage of the bank, V}
     *
     * @param cells in series
     * @param cellVoltage at 25 °C, V
     * @param coefficient c of one cell, V/K
     * @param temperature of the battery, K
     */
    public static Answer voltage(int cells, double cellVoltage, double coefficient, double temperature) {
        Physical.positive("cells", cells);
        Physical.positive("cell voltage", cellVoltage);
        Physical.within("compensation", coefficient, -0.02, 0);
        Physical.positive("temperature", temperature);
        return temperature < 253.15 || temperature > 323.15
                ? Answer.outside("temperature compensation", "battery temperature", temperature, 253.15, 323.15, "K")
                : Answer.of(cells * (cellVoltage + coefficient * (temperature - 298.15)));
    }
}
