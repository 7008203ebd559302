package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Resistance of a conductor against its temperature: R = R20 (1 + α20 (T − 293.15 K)), with α20 = 0.00393 /K for copper and
 * 0.00403 /K for aluminium. Range −50 to 250 °C; outside it an argument is refused.
 *
 * <p>Source: IEC 60287-1-1, table 1 (from memory). IEC 60228, annex, gives for measuring at works the rounder
 * K_t = 250/(230 + t), that is α20 = 0.004; the two differ by 0.3 % at 70 °C.
 */
public final class ConductorTemperature {

    /** α20 of plain copper, 1/K. */
    public static final double COPPER = 0.00393;

    /** α20 of aluminium, 1/K. */
    public static final double ALUMINIUM = 0.00403;

    private static final double AT_20_CELSIUS = 293.15;

    private ConductorTemperature() {}

    /**
     * {@return resistance at a temperature, in the unit of the given one}
     *
     * @param resistance20 at 20 °C
     * @param coefficient α20, 1/K
     * @param temperature of the conductor, K
     */
    public static double resistance(double resistance20, double coefficient, double temperature) {
        Physical.notNegative("resistance at 20 °C", resistance20);
        Physical.positive("temperature coefficient", coefficient);
        Physical.within("conductor temperature", temperature, 223.15, 523.15);
        return resistance20 * (1 + coefficient * (temperature - AT_20_CELSIUS));
    }

    /**
     * {@return factor K_t by which a resistance measured at a temperature is brought to 20 °C, IEC 60228}
     *
     * @param temperature of the conductor, K, 0 to 100 °C
     */
    public static double measuringFactor(double temperature) {
        Physical.within("conductor temperature", temperature, 273.15, 373.15);
        return 250 / (230 + temperature - 273.15);
    }
}
