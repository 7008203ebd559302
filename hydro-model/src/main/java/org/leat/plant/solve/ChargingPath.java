package org.leat.plant.solve;

import org.leat.design.RegulatorKind;
import org.leat.electrics.BridgeOperatingPoint;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.PlantNumbers;

/**
 * The bus from the bridge to the battery.
 *
 * @param regulator power at the regulator's input, W
 * @param battery power at the battery's poles, W
 * @param stored power into the battery behind its internal resistance, W
 * @param current into the battery, A
 * @param voltage at the battery's poles, V
 */
record ChargingPath(double regulator, double battery, double stored, double current, double voltage) {

    /** {@return charging by what the bridge gives} */
    static ChargingPath of(PlantNumbers numbers, BridgeOperatingPoint point, double busVoltage, double busResistance) {
        BatteryNumbers battery = numbers.battery();
        double own = battery.internalResistance();
        PlantNumbers.BusResistance cables = numbers.busResistance();
        // mean square of the current, ripple included: what the resistances of the bus take over their sum
        double square = busResistance > 0
                ? Math.max(0, point.directPower() - busVoltage * point.directCurrent()) / busResistance
                : point.directCurrent() * point.directCurrent();
        double atRegulator = point.directPower() - square * cables.bridgeToRegulator();
        double resting = battery.restingVoltage();
        if (numbers.regulator().kind() != RegulatorKind.TRACKING) {
            double atBattery = atRegulator - square * cables.regulatorToBattery();
            double current = point.directCurrent();
            return new ChargingPath(atRegulator, atBattery, resting * current, current, resting + own * current);
        }
        double out = numbers.regulator().efficiency() * atRegulator;
        double current = current(out, resting, own + cables.regulatorToBattery());
        return new ChargingPath(
                atRegulator,
                resting * current + own * current * current,
                resting * current,
                current,
                resting + own * current);
    }

    /** Current that a power drives into a voltage behind a resistance, A. */
    static double current(double power, double voltage, double resistance) {
        return power <= 0 ? 0 : 2 * power / (voltage + Math.sqrt(voltage * voltage + 4 * resistance * power));
    }
}
