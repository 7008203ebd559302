package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Years a battery lasts at its daily use: cycles at that depth over cycles a year, for lead halved by every 10 K above 25 °C. It
 * ends by age as well: 5 to 12 years for lead, 10 to 15 for lithium iron phosphate [common practice], whatever the cycles.
 *
 * <p>Source: halving by 10 K: a battery education text (grid corrosion of lead); colder is not counted as longer.
 */
public final class CycleLife {

    private static final double DAYS = 365.25;

    private CycleLife() {}

    /**
     * {@return years}
     *
     * @param cycles to 80 % of the capacity at this depth
     * @param cyclesPerDay full turns to this depth
     * @param temperatureFactor share of the cycles left by the temperature, from nil to one
     */
    public static double years(double cycles, double cyclesPerDay, double temperatureFactor) {
        Physical.positive("cycles", cycles);
        Physical.positive("cycles per day", cyclesPerDay);
        Physical.within("temperature factor", temperatureFactor, 0, 1);
        return cycles * temperatureFactor / (cyclesPerDay * DAYS);
    }

    /** {@return share of the life of lead left at a mean temperature, K} */
    public static double leadTemperatureFactor(double temperature) {
        Physical.positive("temperature", temperature);
        return Math.min(1, Math.pow(2, (298.15 - temperature) / 10));
    }
}
