package org.leat.plant;

import org.jspecify.annotations.Nullable;
import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.plant.BatteryFull.Answer;
import org.leat.plant.BatteryFull.Diverted;
import org.leat.plant.Operation.Crossing;

/** A plant whose battery is full, by what its regulator then does. */
final class FullBattery {

    private final PlantNumbers numbers;
    private final Once<TorqueCurve> atAbsorption;
    private final @Nullable Once<TorqueCurve> onDumpAlone;

    FullBattery(PlantNumbers numbers, Machine machine, Once<TorqueCurve> atAbsorption) {
        this.numbers = numbers;
        double cable = numbers.busResistance().bridgeToRegulator();
        this.atAbsorption = atAbsorption;
        DumpLoadNumbers dump = numbers.dumpLoad();
        this.onDumpAlone =
                dump == null ? null : new Once<>(() -> machine.curve(machine.bus(0, dump.resistanceHot() + cable)));
    }

    BatteryFull of(Running running, LoadLost lost) {
        Wheel wheel = new Wheel(numbers.runner(), numbers.water().density(), running.water());
        double voltage = numbers.battery().absorptionVoltage();
        double speed = speed(wheel, atAbsorption.get());
        BridgeOperatingPoint point = atAbsorption.get().pointAt(speed);
        double current = point.directCurrent();
        RegulatorKind kind = numbers.regulator().kind();
        Diverted diverted = diverted(voltage, current);
        boolean letsGo = kind == RegulatorKind.SERIES || kind == RegulatorKind.TRACKING;
        boolean ownDump = numbers.dumpLoad() != null && numbers.dumpLoad().side() == DumpSide.BRIDGE;
        if (letsGo && !ownDump) {
            return new BatteryFull(
                    running.nozzles(),
                    Answer.RUNAWAY,
                    lost.directVoltage(),
                    lost.speed(),
                    current,
                    voltage * current,
                    diverted);
        }
        Answer answer = Answer.OVERCHARGED;
        double highest = point.directVoltage();
        if (kind == RegulatorKind.TRACKING && onDumpAlone != null) {
            // nothing but the dump load is left on the bridge: the bus stands where it takes all
            answer = Answer.DIVERTED;
            speed = speed(wheel, onDumpAlone.get());
            highest = onDumpAlone.get().pointAt(speed).directVoltage();
        } else if (kind != RegulatorKind.NONE && diverted != null && onDumpAlone != null) {
            answer = Answer.DIVERTED;
            if (diverted.share() < 1) {
                answer = Answer.DUMP_TOO_SMALL;
                speed = speed(wheel, onDumpAlone.get());
                highest = Math.max(highest, onDumpAlone.get().pointAt(speed).directVoltage());
            }
        }
        return new BatteryFull(running.nozzles(), answer, highest, speed, current, voltage * current, diverted);
    }

    private static double speed(Wheel wheel, TorqueCurve curve) {
        Crossing first = Meeting.first(Meeting.of(curve, wheel));
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
                hot, cold, voltage * hot, voltage * cold, current > 0 ? hot / current : Double.POSITIVE_INFINITY);
    }
}
