package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.plant.cases.BusHolder;

/** A dump load that still holds the turbine when the battery is lost. */
final class BridgeSideDump {

    private BridgeSideDump() {}

    /** {@return whether there is one that holds the bus on every nozzle set when the battery is removed} */
    static boolean holds(Judgement j) {
        return !j.cases().batteryRemoved().isEmpty()
                && j.cases().batteryRemoved().stream().allMatch(removed -> removed.holder() == BusHolder.DUMP_LOAD);
    }
}
