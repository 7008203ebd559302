package org.leat.plant.cases;

import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;

/** A situation that makes a voltage behind the bridge. */
public sealed interface BusSituation extends Situation
        permits Running, BatteryFull, BatteryRemoved, ManagementOpens, DumpLoadLost, LoadLost, BrokenBridge, Day {

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

    /** {@return speed of the runner at the lasting voltage, rad/s} */
    double runnerSpeed();

    /** {@return what keeps the bus from rising further} */
    BusHolder holder();
}
