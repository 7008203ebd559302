package org.leat.plant.cases;

import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.numbers.NozzleGroup;

/**
 * Battery full: it takes no more current at its absorption voltage.
 *
 * @param nozzles the set
 * @param answer what the plant does about it
 * @param setVoltage at which the surplus is diverted, or the regulator lets go, V
 * @param lastingVoltage the highest behind the bridge, equalising counted, V; where nothing limits the battery that of the
 *     runaway, which follows when it gives up
 * @param batteryVoltage the highest at the battery's node, V
 * @param runnerSpeed rad/s
 * @param dumpVoltage across the dump load while it takes what it can, V; zero without one
 * @param turbineCurrent the turbine gives at the set voltage, A
 * @param turbinePower the turbine gives at the set voltage, W
 * @param elementPower that goes into the cold element for long, W: at the bridge, before a tracking or series regulator, no more
 *     than the turbine gives there, since the battery cannot add to it; zero without a dump load
 * @param diverted what the dump load takes; null without one
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record BatteryFull(
        NozzleGroup nozzles,
        Answer answer,
        double setVoltage,
        double lastingVoltage,
        double batteryVoltage,
        double runnerSpeed,
        double dumpVoltage,
        double turbineCurrent,
        double turbinePower,
        double elementPower,
        @Nullable Diverted diverted)
        implements BusSituation {

    /** What a plant does when its battery is full. */
    public enum Answer {
        /**
         * the dump load takes everything: at the set voltage; switched on by a tracking or series regulator itself, at the
         * voltage it then needs.
         */
        DIVERTED,
        /** the dump load is too small: the voltage rises until it takes what the turbine gives. */
        DUMP_TOO_SMALL,
        /** the regulator lets go of the turbine and no dump load hangs on the bridge: the same as load lost. */
        RUNAWAY,
        /** nothing limits the battery: it is overcharged until it, its fuse or its management opens; then load lost. */
        OVERCHARGED
    }

    /**
     * What the dump load takes.
     *
     * @param currentHot at the set voltage, element hot, A
     * @param currentCold at the set voltage, element cold, A
     * @param powerHot at the set voltage, element hot, W
     * @param powerCold at the set voltage, element cold, W
     * @param share current hot over what the turbine gives; empty where it gives nothing
     */
    public record Diverted(
            double currentHot, double currentCold, double powerHot, double powerCold, OptionalDouble share) {

        /** {@return whether all that the turbine gives is taken} */
        public boolean takesAll() {
            return share.isEmpty() || share.getAsDouble() >= 1;
        }
    }

    @Override
    public BusHolder holder() {
        return switch (answer) {
            case DIVERTED, DUMP_TOO_SMALL -> BusHolder.DUMP_LOAD;
            case RUNAWAY, OVERCHARGED -> BusHolder.NOTHING;
        };
    }

    @Override
    public String id() {
        return "battery-full/" + nozzles.name();
    }
}
