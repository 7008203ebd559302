package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record ManagementOpens(
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
