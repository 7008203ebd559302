package org.leat.plant.cases;

import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.BusSituation.DumpLoadLost;
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
        double lasting =
                held ? Math.min(full.lastingVoltage(), made(numbers, full.runnerSpeed())) : lost.directVoltage();
        // where nothing flows nothing is switched under load
        Amount moment =
                running.operatingPoint().directCurrent() > 0 ? LoadDump.of(numbers, running) : Amount.of(lasting);
        return new BatteryRemoved(
                full.nozzles(),
                held ? BusHolder.DUMP_LOAD : BusHolder.NOTHING,
                lasting,
                moment,
                BatteryNode.lasting(numbers, lasting),
                BatteryNode.moment(numbers, moment),
                held ? full.runnerSpeed() : lost.speed());
    }

    /** Between two leads at a speed of the runner, V: a wheel too slow for the trigger of the dump load makes no more. */
    private static double made(PlantNumbers numbers, double speed) {
        return numbers.alternator().coldMagnetFactor()
                * numbers.alternator()
                        .peakLineVoltage(speed * numbers.alternator().gearRatio());
    }

    static DumpLoadLost dumpLost(PlantNumbers numbers, LoadLost lost) {
        RegulatorKind kind = numbers.regulator().kind();
        boolean joined = kind == RegulatorKind.SHUNT || kind == RegulatorKind.NONE;
        return new DumpLoadLost(lost.nozzles(), joined, lost.directVoltage(), lost.batteryVoltage(), lost.speed());
    }

    /** A dump load on the bridge's side, switched on in time, that takes all and stands its own power. */
    private static boolean held(PlantNumbers numbers, BatteryFull full) {
        DumpLoadNumbers dump = numbers.dumpLoad();
        BatteryFull.Diverted diverted = full.diverted();
        return dump != null
                && dump.side() == DumpSide.BRIDGE
                && inTime(numbers, dump.triggerVoltage())
                && full.answer() == BatteryFull.Answer.DIVERTED
                && diverted != null
                && diverted.takesAll()
                && dump.powerRating() instanceof Amount.Known rating
                && full.elementPower() <= rating.value();
    }

    /** Behind a tracking or series regulator what hangs on the bridge must stand its trigger, which its own rules judge. */
    private static boolean inTime(PlantNumbers numbers, Amount trigger) {
        BatteryNumbers battery = numbers.battery();
        double highest = Math.max(
                battery.absorptionVoltage(), battery.chargeVoltageLimit().or(0));
        return trigger instanceof Amount.Known known
                && (numbers.regulator().divides() || known.value() <= highest * (1 + TOLERANCE));
    }
}
