package org.leat.plant;

import org.jspecify.annotations.Nullable;

/**
 * Battery full: it takes no more current at its absorption voltage.
 *
 * @param nozzles the set
 * @param answer what the plant does about it
 * @param highestVoltage on the bus, V
 * @param speed of the runner, rad/s
 * @param turbineCurrent the turbine gives at absorption voltage, A
 * @param turbinePower the turbine gives at absorption voltage, W
 * @param diverted what the dump load takes; null without one
 */
public record BatteryFull(
        NozzleGroup nozzles,
        Answer answer,
        double highestVoltage,
        double speed,
        double turbineCurrent,
        double turbinePower,
        @Nullable Diverted diverted)
        implements Situation {

    /** What a plant does when its battery is full. */
    public enum Answer {
        /**
         * the dump load takes everything: at absorption voltage, or behind a tracking regulator at the voltage it then
         * needs.
         */
        DIVERTED,
        /** the dump load is too small: the voltage rises until it takes what the turbine gives. */
        DUMP_TOO_SMALL,
        /** the regulator lets go of the turbine and no dump load hangs on the bridge: the same as load lost. */
        RUNAWAY,
        /** nothing limits the battery: it is overcharged. */
        OVERCHARGED
    }

    /**
     * What the dump load takes.
     *
     * @param currentHot at absorption voltage, element hot, A
     * @param currentCold at absorption voltage, element cold, A
     * @param powerHot at absorption voltage, element hot, W
     * @param powerCold at absorption voltage, element cold, W
     * @param share current hot over what the turbine gives; infinite where it gives nothing
     */
    public record Diverted(double currentHot, double currentCold, double powerHot, double powerCold, double share) {}

    @Override
    public String id() {
        return "battery-full/" + nozzles.name();
    }
}
