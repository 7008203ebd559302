package org.leat.plant.solve;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.OperatingPoint;
import org.leat.plant.solved.OperatingPoint.BusVolts;
import org.leat.plant.solved.OperatingPoint.Crossing;
import org.leat.plant.solved.OperatingPoint.Hold;
import org.leat.plant.solved.OperatingPoint.Output;
import org.leat.plant.solved.OperatingPoint.Shaft;
import org.leat.plant.solved.OperatingPoint.StableSpeed;
import org.leat.plant.solved.OperatingPoint.TorquePeak;
import org.leat.plant.solved.OperatingPoint.Tracking;
import org.leat.plant.solved.WaterSide;

/** The working point of one wheel on one bus. */
final class OperatingPointSolver {

    private OperatingPointSolver() {}

    static OperatingPoint of(
            PlantNumbers numbers,
            WaterSide water,
            RunnerCharacteristic runner,
            TorqueCurve curve,
            @Nullable Tracking tracking) {
        List<Crossing> crossings = TorqueBalance.of(curve, runner);
        Crossing first = TorqueBalance.first(crossings);
        double speed = first == null ? 0 : first.speed();
        BridgeOperatingPoint point = curve.pointAt(speed);
        double peak = curve.peakSpeed();
        Hold hold = Hold.HELD;
        if (first == null) {
            hold = Hold.DOES_NOT_START;
        } else if (!(point.directCurrent() > 0)) {
            hold = Hold.BELOW_CUT_IN;
        } else if (speed > peak) {
            hold = Hold.NOT_HELD;
        }
        double torque = first == null ? 0 : first.torque();
        double busVoltage = curve.bus().busVoltage();
        double busResistance = curve.bus().busResistance();
        ChargingPath charging = ChargingPath.of(numbers, point, busVoltage, busResistance);
        AlternatorNumbers alternator = numbers.alternator();
        double alternatorSpeed = speed * alternator.gearRatio();
        double clamped = busVoltage + busResistance * point.directCurrent();
        // a regulator that gets no current holds nothing: the bridge stands at what that speed makes
        double bridge = tracking != null && !(point.directCurrent() > 0)
                ? Math.min(clamped, curve.bus().alternator().linePeak(alternatorSpeed))
                : clamped;
        BusVolts volts = new BusVolts(
                bridge,
                bridge - numbers.busResistance().bridgeToRegulator() * point.directCurrent(),
                charging.voltage(),
                numbers.battery().restingVoltage());
        return new SolvedPoint(
                hold,
                new Shaft(speed, alternatorSpeed, runner.speedRatio(speed), torque),
                new Output(
                        alternator.polePairs() * alternatorSpeed / (2 * Math.PI),
                        point.phaseCurrentRms(),
                        point.directCurrent()),
                curve.windingTemperature(),
                volts,
                new TorquePeak(peak, curve.torqueAt(peak), runner.torque(peak)),
                crossings,
                others(crossings, first, curve, alternator),
                tracking,
                EnergyAccounting.of(numbers, water, torque * speed, point, charging));
    }

    private static List<StableSpeed> others(
            List<Crossing> crossings, @Nullable Crossing first, TorqueCurve curve, AlternatorNumbers alternator) {
        List<StableSpeed> others = new ArrayList<>();
        for (Crossing crossing : crossings) {
            if (crossing.stable() && (first == null || crossing.speed() != first.speed())) {
                BridgeOperatingPoint point = curve.pointAt(crossing.speed());
                double own = crossing.speed() * alternator.gearRatio();
                others.add(new StableSpeed(
                        crossing.speed(),
                        own,
                        alternator.polePairs() * own / (2 * Math.PI),
                        point.phaseCurrentRms(),
                        point.directCurrent(),
                        point.directPower(),
                        point.copperLoss(),
                        alternator.noLoad().at(own) * own));
            }
        }
        return others;
    }
}
