package org.leat.choice;

import org.apiguardian.api.API;
import org.leat.plant.solved.OperatingPoint;

/**
 * What one nozzle set gives with the battery taking what comes.
 *
 * @param nozzles the set's name
 * @param asBuilt whether it is the set that is open as built
 * @param fullPipe whether the stream keeps the pipe full
 * @param hold whether the alternator holds the wheel, or why not
 * @param batteryPower at the battery, W
 * @param energyPerDay batteryPower over 24 hours, J
 * @param current at the battery, A, direct
 * @param voltage at the battery's poles, V
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Yield(
        String nozzles,
        boolean asBuilt,
        boolean fullPipe,
        OperatingPoint.Hold hold,
        double batteryPower,
        double energyPerDay,
        double current,
        double voltage) {

    /** {@return whether the alternator holds the wheel with them} */
    public boolean held() {
        return hold == OperatingPoint.Hold.HELD;
    }
}
