package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;

/**
 * A situation that makes a voltage behind the bridge.
 *
 * <p>Where a tracking or series regulator stands between bridge and battery there are two nodes, each with a voltage of its own:
 * the bridge's, which follows the wheel, and the battery's, which the regulator holds at its set point. Without one there is one
 * node, and both voltages are the same.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface BusSituation extends Situation
        permits Running,
                BatteryFull,
                BusSituation.BatteryRemoved,
                BusSituation.ManagementOpens,
                BusSituation.DumpLoadLost,
                LoadLost,
                BusSituation.RegulatorFailedShort,
                BrokenBridge,
                Day {

    /** {@return the nozzle set} */
    NozzleGroup nozzles();

    /** {@return the highest voltage behind the bridge that lasts, V} */
    double lastingVoltage();

    /**
     * {@return the highest voltage behind the bridge for a moment, V; unknown where the design does not say what limits it}
     * The lasting one where nothing is switched under load.
     */
    default Amount momentVoltage() {
        return Amount.of(lastingVoltage());
    }

    /** {@return the highest voltage at the battery's node that lasts, V} Where there is one node that behind the bridge. */
    double batteryVoltage();

    /**
     * {@return the highest voltage at the battery's node for a moment, V; unknown where the design does not say what limits it}
     * The lasting one where nothing is switched under load, and behind a tracking regulator.
     */
    default Amount batteryMoment() {
        return Amount.of(batteryVoltage());
    }

    /** {@return speed of the runner at the lasting voltage, rad/s} */
    double runnerSpeed();

    /** {@return what keeps the bus from rising further} */
    BusHolder holder();

    /** What keeps the bus from rising further in a situation. */
    enum BusHolder {
        /** the battery, which takes what comes. */
        BATTERY,
        /** a tracking regulator, which chooses the voltage. */
        REGULATOR,
        /** the dump load: at the voltage that switches it on, or at the one at which it takes all. */
        DUMP_LOAD,
        /** nothing: the wheel runs away and the bus follows it. */
        NOTHING
    }

    /**
     * A tracking or series regulator whose switch has failed short: bridge and battery are one node.
     *
     * <p>At first the battery holds that node, and takes what the alternator makes at the battery's voltage. Nothing limits it any
     * more: it is overcharged until it, its fuse or its management opens, and then the wheel runs away with all that hangs on either
     * node. A dump load with a trigger of its own that takes everything holds the node instead, at that trigger.
     *
     * @param nozzles the set
     * @param chargingCurrent into the battery at first, A
     * @param phaseCurrent of one lead at first, rms, A
     * @param overcharges whether the battery is driven above what it may be charged with before anything holds the node
     * @param holder what holds the node in the end
     * @param lastingVoltage of the node in the end, V
     * @param runnerSpeed in the end, rad/s
     */
    record RegulatorFailedShort(
            NozzleGroup nozzles,
            double chargingCurrent,
            double phaseCurrent,
            boolean overcharges,
            BusHolder holder,
            double lastingVoltage,
            double runnerSpeed)
            implements BusSituation {

        @Override
        public double batteryVoltage() {
            return lastingVoltage;
        }

        @Override
        public String id() {
            return "regulator-failed-short/" + nozzles.name();
        }
    }

    /**
     * The dump load is lost while the battery is full: its element burns through, its switch does not close.
     *
     * <p>Behind a regulator that lets go, nothing is left on the bridge. Otherwise all goes into the full battery until that, its
     * management or its fuse opens. Either way the wheel runs away in the end. A second, independent means against overvoltage is
     * not counted.
     *
     * @param nozzles the set
     * @param overchargesFirst whether the battery is still joined to the bridge and is overcharged before the wheel runs away
     * @param lastingVoltage behind the bridge in the end, V
     * @param batteryVoltage at the battery's node, V
     * @param runnerSpeed rad/s
     */
    record DumpLoadLost(
            NozzleGroup nozzles,
            boolean overchargesFirst,
            double lastingVoltage,
            double batteryVoltage,
            double runnerSpeed)
            implements BusSituation {

        @Override
        public BusHolder holder() {
            return BusHolder.NOTHING;
        }

        @Override
        public String id() {
            return "dump-lost/" + nozzles.name();
        }
    }

    /**
     * Battery removed while the turbine generates: its lead comes off, its fuse blows, a switch opens.
     *
     * <p>A tracking or series regulator has nothing left to give to, and a dump load at the battery's poles goes with it: the
     * wheel runs away. A dump load on the bridge's side holds it if a voltage that the battery still stands switches it on, if
     * it takes all there, and if its element stands its own power; that must be stated, not guessed.
     *
     * @param nozzles the set
     * @param holder what is left to hold the bus
     * @param lastingVoltage behind the bridge, V
     * @param momentVoltage behind the bridge while the current of the winding dies away, V; magnets cold; the lasting one where
     *     nothing flows
     * @param batteryVoltage at the battery's node, V
     * @param batteryMoment at the battery's node while the current of the winding dies away, V
     * @param runnerSpeed rad/s
     */
    record BatteryRemoved(
            NozzleGroup nozzles,
            BusHolder holder,
            double lastingVoltage,
            Amount momentVoltage,
            double batteryVoltage,
            Amount batteryMoment,
            double runnerSpeed)
            implements BusSituation {

        @Override
        public String id() {
            return "battery-removed/" + nozzles.name();
        }
    }

    /**
     * The battery's own management opens while the turbine generates: one full, one cold or one hot cell is enough. To the bus
     * it is as if the battery were removed ({@link BatteryRemoved}); a dump load at the battery's poles is taken to go with it.
     *
     * @param nozzles the set
     * @param holder what is left to hold the bus
     * @param lastingVoltage behind the bridge, V
     * @param momentVoltage behind the bridge while the current of the winding dies away, V; magnets cold; the lasting one where
     *     nothing flows
     * @param batteryVoltage at the battery's node, V
     * @param batteryMoment at the battery's node while the current of the winding dies away, V
     * @param runnerSpeed rad/s
     */
    record ManagementOpens(
            NozzleGroup nozzles,
            BusHolder holder,
            double lastingVoltage,
            Amount momentVoltage,
            double batteryVoltage,
            Amount batteryMoment,
            double runnerSpeed)
            implements BusSituation {

        static ManagementOpens of(BatteryRemoved removed) {
            return new ManagementOpens(
                    removed.nozzles(),
                    removed.holder(),
                    removed.lastingVoltage(),
                    removed.momentVoltage(),
                    removed.batteryVoltage(),
                    removed.batteryMoment(),
                    removed.runnerSpeed());
        }

        @Override
        public String id() {
            return "management-opens/" + nozzles.name();
        }
    }
}
