package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.electrics.DumpElement;
import org.leat.plant.BatteryFull;
import org.leat.plant.BatteryNumbers;
import org.leat.plant.DumpLoadNumbers;
import org.leat.quantity.Si;

/** A dump load that still holds the turbine when the battery is lost. */
final class BridgeSideDump {

    private static final double TOLERANCE = 1e-6;

    private BridgeSideDump() {}

    /**
     * {@return whether there is one that takes everything the turbine gives} It hangs on the bridge's side of the
     * battery's fuse, is switched on by a voltage that the battery still stands, and its element stands its own power.
     */
    static boolean holds(Judgement j) {
        DumpLoad dump = j.design().dumpLoad();
        return dump != null
                && dump.side() == DumpSide.BRIDGE
                && triggeredInTime(j, dump)
                && standsItself(j, dump)
                && !j.cases().batteryFull().isEmpty()
                && j.cases().batteryFull().stream().allMatch(full -> {
                    BatteryFull.Diverted diverted = full.diverted();
                    return diverted != null && diverted.share() >= 1;
                });
    }

    private static boolean triggeredInTime(Judgement j, DumpLoad dump) {
        BatteryNumbers battery = j.plant().numbers().battery();
        double highest = Math.max(
                battery.absorptionVoltage(), battery.chargeVoltageLimit().or(0));
        return dump.triggerVoltage() != null && Si.of(dump.triggerVoltage()) <= highest * (1 + TOLERANCE);
    }

    private static boolean standsItself(Judgement j, DumpLoad dump) {
        DumpLoadNumbers numbers = j.plant().numbers().dumpLoad();
        return numbers != null
                && numbers.powerRating() != null
                && dump.triggerVoltage() != null
                && DumpElement.power(numbers.resistanceCold(), Si.of(dump.triggerVoltage())) <= numbers.powerRating();
    }
}
