package org.leat.plant;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.plant.Operation.BusVolts;
import org.leat.plant.Operation.Crossing;
import org.leat.plant.Operation.Hold;
import org.leat.plant.Operation.TorquePeak;
import org.leat.plant.Operation.Tracking;

/** The working point of one wheel on one bus. */
final class Operating {

    private Operating() {}

    static Operation of(
            PlantNumbers numbers, WaterSide water, Wheel wheel, TorqueCurve curve, @Nullable Tracking tracking) {
        List<Crossing> crossings = Meeting.of(curve, wheel);
        Crossing first = Meeting.first(crossings);
        double speed = first == null ? 0 : first.speed();
        BridgeOperatingPoint point = curve.pointAt(speed);
        double peak = curve.peakSpeed();
        Hold hold = Hold.HELD;
        if (!(point.directCurrent() > 0)) {
            hold = Hold.BELOW_CUT_IN;
        } else if (speed > peak) {
            hold = Hold.NOT_HELD;
        }
        double torque = first == null ? 0 : first.torque();
        double busVoltage = curve.bus().busVoltage();
        double busResistance = curve.bus().busResistance();
        Charging charging = Charging.of(numbers, point, busVoltage, busResistance);
        double bridge = busVoltage + busResistance * point.directCurrent();
        BusVolts volts = new BusVolts(
                bridge,
                bridge - numbers.busResistance().bridgeToRegulator() * point.directCurrent(),
                charging.voltage(),
                numbers.battery().restingVoltage());
        AlternatorNumbers alternator = numbers.alternator();
        double alternatorSpeed = speed * alternator.gearRatio();
        return new Operation(
                hold,
                speed,
                alternatorSpeed,
                wheel.speedRatio(speed),
                torque,
                alternator.polePairs() * alternatorSpeed / (2 * Math.PI),
                point.phaseCurrentRms(),
                point.directCurrent(),
                curve.windingTemperature(),
                volts,
                new TorquePeak(peak, curve.torqueAt(peak), wheel.torque(peak)),
                speed / peak,
                crossings,
                tracking,
                Account.of(numbers, water, torque * speed, point, charging));
    }
}
