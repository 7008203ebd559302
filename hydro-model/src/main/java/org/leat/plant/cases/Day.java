package org.leat.plant.cases;

import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;

/**
 * Running with the nozzles as built on the coldest or the hottest day: water, magnets, copper and battery at that day's
 * temperatures, as far as the design states them.
 *
 * @param season which day
 * @param waterTemperature K
 * @param airTemperature K
 * @param windingTemperature settled at that day's losses, K; unknown without the alternator's thermal resistance: it is then
 *     taken as stated for running
 * @param magnetTemperature K; the air's on the coldest day, when the machine starts cold, the winding's on the hottest
 * @param fluxFactor flux over that at 20 °C
 * @param cableTemperature of the cores, K; 15 K above the air
 * @param batteryTemperature K; unknown where the design does not state it: it is then taken as the air's
 * @param charging whether the chemistry may be charged at that temperature
 * @param absorptionVoltage the regulator's set point at that temperature, V; unknown where a lead battery's compensation is
 *     not stated
 * @param running where runner and alternator meet
 * @param holder what keeps the bus from rising; what is left when the management refuses to charge in the cold
 * @param lastingVoltage highest behind the bridge, V
 * @param runnerSpeed rad/s
 * @param runawayVoltage the peak between leads if the load is lost that day, V
 */
public record Day(
        Season season,
        double waterTemperature,
        double airTemperature,
        Amount windingTemperature,
        double magnetTemperature,
        double fluxFactor,
        double cableTemperature,
        Amount batteryTemperature,
        Charging charging,
        Amount absorptionVoltage,
        Running running,
        BusHolder holder,
        double lastingVoltage,
        double runnerSpeed,
        double runawayVoltage)
        implements BusSituation {

    /** Which day of the year. */
    public enum Season {
        /** the coldest. */
        COLDEST,
        /** the hottest. */
        HOTTEST
    }

    /** Whether the battery may be charged. */
    public enum Charging {
        /** its temperature lies inside its chemistry's limits. */
        ALLOWED,
        /** it is too cold or too hot. */
        REFUSED
    }

    @Override
    public NozzleGroup nozzles() {
        return running.nozzles();
    }

    @Override
    public String id() {
        return (season == Season.COLDEST ? "coldest-day/" : "hottest-day/")
                + running.nozzles().name();
    }
}
