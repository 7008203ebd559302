package org.leat.plant.cases;

import org.leat.electrics.BridgeOperatingPoint;
import org.leat.lazy.Once;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.TorqueBalance;
import org.leat.plant.solve.TorqueCurve;
import org.leat.plant.solved.OperatingPoint.Crossing;

/** A plant whose tracking or series regulator joins bridge and battery for good. */
final class RegulatorFailedShortSolver {

    private final PlantNumbers numbers;
    private final TorqueCurve onBattery;
    private final Once<TorqueCurve> atSetVoltage;

    /** @param onBattery the bus that the battery clamps with nothing between */
    RegulatorFailedShortSolver(PlantNumbers numbers, TorqueCurve onBattery, Once<TorqueCurve> atSetVoltage) {
        this.numbers = numbers;
        this.onBattery = onBattery;
        this.atSetVoltage = atSetVoltage;
    }

    RegulatorFailedShort of(Running running, LoadLost lost) {
        RunnerCharacteristic runner =
                new RunnerCharacteristic(numbers.runner(), numbers.water().density(), running.water());
        BridgeOperatingPoint first = onBattery.pointAt(speed(runner, onBattery));
        DumpLoadNumbers dump = numbers.dumpLoad();
        if (dump != null && dump.side() != null && dump.triggerVoltage() instanceof Amount.Known trigger) {
            double speed = speed(runner, atSetVoltage.get());
            BridgeOperatingPoint held = atSetVoltage.get().pointAt(speed);
            boolean takesAll = held.directCurrent() * dump.resistanceHot() <= trigger.value();
            if (takesAll && standsIt(dump, trigger.value()) && trigger.value() <= lost.directVoltage()) {
                return new RegulatorFailedShort(
                        running.nozzles(),
                        first.directCurrent(),
                        first.phaseCurrentRms(),
                        trigger.value() > mostOfBattery(),
                        BusHolder.DUMP_LOAD,
                        held.directVoltage(),
                        speed);
            }
        }
        return new RegulatorFailedShort(
                running.nozzles(),
                first.directCurrent(),
                first.phaseCurrentRms(),
                lost.directVoltage() > mostOfBattery(),
                BusHolder.NOTHING,
                lost.directVoltage(),
                lost.speed());
    }

    /** Now the battery adds to what the element takes. */
    private static boolean standsIt(DumpLoadNumbers dump, double trigger) {
        return dump.powerRating() instanceof Amount.Known rating && dump.powerCold(trigger) <= rating.value();
    }

    private double mostOfBattery() {
        double absorption = numbers.battery().absorptionVoltage();
        return Math.max(absorption, numbers.battery().chargeVoltageLimit().or(absorption));
    }

    private static double speed(RunnerCharacteristic runner, TorqueCurve curve) {
        Crossing first = TorqueBalance.first(TorqueBalance.of(curve, runner));
        return first == null ? 0 : first.speed();
    }
}
