package org.leat.plant.cases;

import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.electrics.DumpElement;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.PlantNumbers;

/** A plant that has lost its battery or its dump load, by what is left on the bridge. */
final class BatteryRemovedSolver {

    private static final double TOLERANCE = 1e-6;

    private BatteryRemovedSolver() {}

    static BatteryRemoved removed(PlantNumbers numbers, Running running, BatteryFull full, LoadLost lost) {
        boolean held = held(numbers, full);
        return new BatteryRemoved(
                full.nozzles(),
                held ? BusHolder.DUMP_LOAD : BusHolder.NOTHING,
                held ? full.lastingVoltage() : lost.directVoltage(),
                LoadDump.of(numbers, running),
                held ? full.runnerSpeed() : lost.speed());
    }

    static DumpLoadLost dumpLost(PlantNumbers numbers, LoadLost lost) {
        RegulatorKind kind = numbers.regulator().kind();
        boolean joined = kind == RegulatorKind.SHUNT || kind == RegulatorKind.NONE;
        return new DumpLoadLost(lost.nozzles(), joined, lost.directVoltage(), lost.speed());
    }

    /** A dump load on the bridge's side, switched on in time, that takes all and stands its own power. */
    private static boolean held(PlantNumbers numbers, BatteryFull full) {
        DumpLoadNumbers dump = numbers.dumpLoad();
        BatteryFull.Diverted diverted = full.diverted();
        return dump != null
                && dump.side() == DumpSide.BRIDGE
                && inTime(dump.triggerVoltage(), numbers.battery())
                && full.answer() == BatteryFull.Answer.DIVERTED
                && diverted != null
                && diverted.takesAll()
                && dump.powerRating() instanceof Amount.Known rating
                && DumpElement.power(dump.resistanceCold(), full.dumpVoltage()) <= rating.value();
    }

    private static boolean inTime(Amount trigger, BatteryNumbers battery) {
        double highest = Math.max(
                battery.absorptionVoltage(), battery.chargeVoltageLimit().or(0));
        return trigger instanceof Amount.Known known && known.value() <= highest * (1 + TOLERANCE);
    }
}
