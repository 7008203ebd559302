package org.leat.plant.cases;

import org.apiguardian.api.API;
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
                BatteryRemoved,
                ManagementOpens,
                DumpLoadLost,
                LoadLost,
                RegulatorFailedShort,
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
}
