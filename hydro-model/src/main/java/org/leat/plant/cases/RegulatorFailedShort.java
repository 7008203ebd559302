package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.numbers.NozzleGroup;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record RegulatorFailedShort(
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
