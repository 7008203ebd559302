package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record BatteryRemoved(
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
