package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.numbers.NozzleGroup;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record DumpLoadLost(
        NozzleGroup nozzles, boolean overchargesFirst, double lastingVoltage, double batteryVoltage, double runnerSpeed)
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
