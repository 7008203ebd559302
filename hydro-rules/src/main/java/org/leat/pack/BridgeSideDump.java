package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.plant.BatteryFull;

/** A dump load that still holds the turbine when the battery is lost. */
final class BridgeSideDump {

    private BridgeSideDump() {}

    /**
     * {@return whether there is one that takes everything the turbine gives} It hangs on the bridge's side of the
     * battery's fuse and is switched by voltage, by a regulator that diverts.
     */
    static boolean holds(Judgement j) {
        DumpLoad dump = j.design().dumpLoad();
        return dump != null
                && dump.side() == DumpSide.BRIDGE
                && dump.triggerVoltage() != null
                && !j.cases().batteryFull().isEmpty()
                && j.cases().batteryFull().stream().allMatch(full -> {
                    BatteryFull.Diverted diverted = full.diverted();
                    return diverted != null && diverted.share() >= 1;
                });
    }
}
