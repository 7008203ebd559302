package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;

/**
 * Running with the nozzles as built on the coldest or the hottest day: water, magnets, copper and battery at that day's
 * temperatures, as far as the design states them. Made by the solver alone; two are equal where all their numbers are.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface Day extends BusSituation permits SolvedDay {

    /** {@return which day} */
    Season season();

    /** {@return how warm everything is} */
    Temperatures temperatures();

    /** {@return flux over that at 20 °C} */
    double fluxFactor();

    /** {@return whether the chemistry may be charged at that temperature} */
    Charging charging();

    /**
     * {@return the regulator's set point at that temperature, V; unknown where a lead battery's compensation is not
     * stated}
     */
    Amount absorptionVoltage();

    /** {@return where runner and alternator meet} */
    Running running();

    /** {@return what becomes of the bus} */
    Bus bus();

    /** Which day of the year. */
    enum Season {
        /** the coldest. */
        COLDEST,
        /** the hottest. */
        HOTTEST
    }

    /** Whether the battery may be charged. */
    enum Charging {
        /** its temperature lies inside its chemistry's limits. */
        ALLOWED,
        /** it is too cold or too hot. */
        REFUSED
    }

    /**
     * How warm everything is.
     *
     * @param water K
     * @param air K
     * @param winding settled at that day's losses, K; unknown without the alternator's thermal resistance: it is then taken
     *     as stated for running
     * @param magnets K; the air's on the coldest day, when the machine starts cold, the winding's on the hottest
     * @param cables of the cores, K; 15 K above the air
     * @param battery K; unknown where the design does not state it: it is then taken as the air's
     */
    record Temperatures(double water, double air, Amount winding, double magnets, double cables, Amount battery) {}

    /**
     * What becomes of the bus.
     *
     * @param holder what keeps it from rising; what is left when the management refuses to charge in the cold
     * @param lastingVoltage highest behind the bridge, V
     * @param batteryVoltage at the battery's node, V
     * @param runnerSpeed rad/s
     * @param runawayVoltage the peak between leads if the load is lost that day, V
     */
    record Bus(
            BusHolder holder,
            double lastingVoltage,
            double batteryVoltage,
            double runnerSpeed,
            double runawayVoltage) {}

    /** {@return K} */
    default double waterTemperature() {
        return temperatures().water();
    }

    /** {@return K} */
    default double airTemperature() {
        return temperatures().air();
    }

    /** {@return settled at that day's losses, K; unknown without the alternator's thermal resistance} */
    default Amount windingTemperature() {
        return temperatures().winding();
    }

    /** {@return K; the air's on the coldest day, the winding's on the hottest} */
    default double magnetTemperature() {
        return temperatures().magnets();
    }

    /** {@return of the cores, K} */
    default double cableTemperature() {
        return temperatures().cables();
    }

    /** {@return K; unknown where the design does not state it} */
    default Amount batteryTemperature() {
        return temperatures().battery();
    }

    /** {@return the peak between leads if the load is lost that day, V} */
    default double runawayVoltage() {
        return bus().runawayVoltage();
    }

    @Override
    default BusHolder holder() {
        return bus().holder();
    }

    @Override
    default double lastingVoltage() {
        return bus().lastingVoltage();
    }

    @Override
    default double batteryVoltage() {
        return bus().batteryVoltage();
    }

    @Override
    default double runnerSpeed() {
        return bus().runnerSpeed();
    }

    @Override
    default NozzleGroup nozzles() {
        return running().nozzles();
    }

    @Override
    default String id() {
        return (season() == Season.COLDEST ? "coldest-day/" : "hottest-day/")
                + running().nozzles().name();
    }
}
