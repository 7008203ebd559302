package org.leat.plant.cases;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.lazy.Once;
import org.leat.plant.cases.BatteryFull.Answer;
import org.leat.plant.cases.BatteryFull.Diverted;
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
        double set = numbers.fullVoltage();
        double speed = speed(runner, atSetVoltage.get());
        BridgeOperatingPoint point = atSetVoltage.get().pointAt(speed);
        double current = point.directCurrent();
        Diverted diverted = diverted(set, current);
        Answer answer = answer(diverted, set > lost.directVoltage());
        double highest = lost.directVoltage();
        double runnerSpeed = lost.speed();
        double dumpVoltage = diverted == null ? 0 : set;
        boolean alone = answer == Answer.DUMP_TOO_SMALL
                || (answer == Answer.DIVERTED && numbers.regulator().kind() == RegulatorKind.TRACKING);
        if (alone) {
            // nothing but the dump load limits the bus: it stands where it takes all
            runnerSpeed = speed(runner, onDumpAlone.get());
            highest = Math.max(
                    answer == Answer.DUMP_TOO_SMALL ? point.directVoltage() : set,
                    onDumpAlone.get().pointAt(runnerSpeed).directVoltage());
            dumpVoltage = Math.max(set, highest);
        } else if (answer == Answer.DIVERTED) {
            runnerSpeed = speed;
            highest = Math.min(lost.directVoltage(), point.directVoltage() + equalisingAbove(set));
            dumpVoltage = set + equalisingAbove(set);
        }
        return new BatteryFull(
                running.nozzles(), answer, set, highest, runnerSpeed, dumpVoltage, current, set * current, diverted);
    }

    private Answer answer(@Nullable Diverted diverted, boolean neverReached) {
        RegulatorKind kind = numbers.regulator().kind();
        DumpLoadNumbers dump = numbers.dumpLoad();
        boolean letsGo = kind == RegulatorKind.SERIES || kind == RegulatorKind.TRACKING;
        if (letsGo && (dump == null || dump.side() != DumpSide.BRIDGE || neverReached)) {
            return Answer.RUNAWAY;
        }
        if (dump == null
                || diverted == null
                || (kind == RegulatorKind.NONE && !dump.triggerVoltage().isKnown())) {
            return Answer.OVERCHARGED;
        }
        return kind == RegulatorKind.TRACKING || diverted.takesAll() ? Answer.DIVERTED : Answer.DUMP_TOO_SMALL;
    }

    /** A regulator that equalises lets the bus rise to that set point, unless the dump load has a trigger of its own. */
    private double equalisingAbove(double set) {
        OptionalDouble equalising = numbers.regulator().equalisingVoltage();
        DumpLoadNumbers dump = numbers.dumpLoad();
        return equalising.isEmpty() || (dump != null && dump.triggerVoltage().isKnown())
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
