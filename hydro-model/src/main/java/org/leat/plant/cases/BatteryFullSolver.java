package org.leat.plant.cases;

import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.lazy.Once;
import org.leat.plant.cases.BatteryFull.Answer;
import org.leat.plant.cases.BatteryFull.Diverted;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.TorqueBalance;
import org.leat.plant.solve.TorqueCurve;
import org.leat.plant.solved.OperatingPoint.Crossing;

/** A plant whose battery is full, by what its regulator then does. */
final class BatteryFullSolver {

    private final PlantNumbers numbers;
    private final Once<TorqueCurve> atSetVoltage;
    private final Once<TorqueCurve> onDumpAlone;

    /** @param onDumpAlone asked only where there is a dump load */
    BatteryFullSolver(PlantNumbers numbers, Once<TorqueCurve> atSetVoltage, Once<TorqueCurve> onDumpAlone) {
        this.numbers = numbers;
        this.atSetVoltage = atSetVoltage;
        this.onDumpAlone = onDumpAlone;
    }

    BatteryFull of(Running running, LoadLost lost) {
        RunnerCharacteristic runner =
                new RunnerCharacteristic(numbers.runner(), numbers.water().density(), running.water());
        return divertsAtBattery() && running.operatingPoint().tracking() != null
                ? behindTracking(running, lost)
                : atBridge(running, lost, runner);
    }

    /** Where the dump load hangs at the battery and comes on before a tracking regulator lets go, all runs on as before. */
    private BatteryFull behindTracking(Running running, LoadLost lost) {
        double set = numbers.fullVoltage();
        double power = running.operatingPoint().batteryPower();
        double current = power / set;
        Diverted diverted = diverted(set, current);
        if (diverted == null || !diverted.takesAll()) {
            return runaway(running, lost, set, current, diverted, Answer.RUNAWAY);
        }
        return new BatteryFull(
                running.nozzles(),
                Answer.DIVERTED,
                set,
                running.lastingVoltage(),
                set,
                running.runnerSpeed(),
                set,
                current,
                power,
                diverted.powerCold(),
                diverted);
    }

    private BatteryFull atBridge(Running running, LoadLost lost, RunnerCharacteristic runner) {
        double set = numbers.fullVoltage();
        double speed = speed(runner, atSetVoltage.get());
        BridgeOperatingPoint point = atSetVoltage.get().pointAt(speed);
        double current = point.directCurrent();
        Diverted diverted = diverted(set, current);
        Answer answer = answer(diverted, set > lost.directVoltage());
        if (answer == Answer.RUNAWAY || answer == Answer.OVERCHARGED) {
            return runaway(running, lost, set, current, diverted, answer);
        }
        double highest = Math.min(lost.directVoltage(), point.directVoltage() + equalisingAbove(set));
        double dumpVoltage = set + equalisingAbove(set);
        double made = set * current;
        if (answer == Answer.DUMP_TOO_SMALL || switchedByRegulator()) {
            // nothing but the dump load limits the bus: it stands where it takes all
            speed = speed(runner, onDumpAlone.get());
            BridgeOperatingPoint alone = onDumpAlone.get().pointAt(speed);
            highest = alone.directVoltage();
            dumpVoltage = highest;
            made = alone.directPower();
        }
        double cold = Objects.requireNonNull(numbers.dumpLoad()).powerCold(dumpVoltage);
        return new BatteryFull(
                running.nozzles(),
                answer,
                set,
                highest,
                BatteryNode.lasting(numbers, highest),
                speed,
                dumpVoltage,
                current,
                set * current,
                beforeRegulator() ? Math.min(cold, made) : cold,
                diverted);
    }

    private BatteryFull runaway(
            Running running, LoadLost lost, double set, double current, @Nullable Diverted diverted, Answer answer) {
        double onDump = diverted == null ? 0 : set;
        return new BatteryFull(
                running.nozzles(),
                answer,
                set,
                lost.directVoltage(),
                lost.batteryVoltage(),
                lost.speed(),
                onDump,
                current,
                set * current,
                diverted == null ? 0 : diverted.powerCold(),
                diverted);
    }

    private Answer answer(@Nullable Diverted diverted, boolean neverReached) {
        RegulatorKind kind = numbers.regulator().kind();
        DumpLoadNumbers dump = numbers.dumpLoad();
        if (numbers.regulator().divides()) {
            if (divertsAtBattery() && diverted != null && diverted.takesAll()) {
                return Answer.DIVERTED;
            }
            if (dump == null || diverted == null || dump.side() != DumpSide.BRIDGE || neverReached) {
                return Answer.RUNAWAY;
            }
            return switchedByRegulator() || diverted.takesAll() ? Answer.DIVERTED : Answer.DUMP_TOO_SMALL;
        }
        if (dump == null
                || diverted == null
                || (kind == RegulatorKind.NONE && !dump.triggerVoltage().isKnown())) {
            return Answer.OVERCHARGED;
        }
        return diverted.takesAll() ? Answer.DIVERTED : Answer.DUMP_TOO_SMALL;
    }

    /** A dump load at the poles of the battery that comes on below the voltage at which the regulator lets go. */
    private boolean divertsAtBattery() {
        DumpLoadNumbers dump = numbers.dumpLoad();
        return numbers.regulator().divides()
                && dump != null
                && dump.side() == DumpSide.BATTERY
                && dump.triggerVoltage() instanceof Amount.Known trigger
                && trigger.value() < numbers.battery().absorptionVoltage();
    }

    /** The battery cannot add to what a dump load takes that hangs before the regulator. */
    private boolean beforeRegulator() {
        DumpLoadNumbers dump = numbers.dumpLoad();
        return numbers.regulator().divides() && dump != null && dump.side() == DumpSide.BRIDGE;
    }

    /** Without a voltage of its own that switches it on, a dump load before a regulator is on while that lets go. */
    private boolean switchedByRegulator() {
        DumpLoadNumbers dump = numbers.dumpLoad();
        return beforeRegulator() && dump != null && !dump.triggerVoltage().isKnown();
    }

    /** A regulator that equalises lets the bus rise to that set point, unless the dump load has a trigger of its own. */
    private double equalisingAbove(double set) {
        OptionalDouble equalising = numbers.regulator().equalisingVoltage();
        DumpLoadNumbers dump = numbers.dumpLoad();
        // behind a tracking or series regulator it is the battery's node that equalises, not the dump load's
        return equalising.isEmpty()
                        || numbers.regulator().divides()
                        || (dump != null && dump.triggerVoltage().isKnown())
                ? 0
                : Math.max(0, equalising.getAsDouble() - set);
    }

    private static double speed(RunnerCharacteristic runner, TorqueCurve curve) {
        Crossing first = TorqueBalance.first(TorqueBalance.of(curve, runner));
        return first == null ? 0 : first.speed();
    }

    private @Nullable Diverted diverted(double voltage, double current) {
        DumpLoadNumbers dump = numbers.dumpLoad();
        if (dump == null) {
            return null;
        }
        double hot = voltage / dump.resistanceHot();
        double cold = voltage / dump.resistanceCold();
        return new Diverted(
                hot,
                cold,
                voltage * hot,
                voltage * cold,
                current > 0 ? OptionalDouble.of(hot / current) : OptionalDouble.empty());
    }
}
