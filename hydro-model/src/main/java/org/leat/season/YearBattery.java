package org.leat.season;

import org.apiguardian.api.API;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.BatteryNumbers;

/**
 * The battery as a year needs it.
 *
 * @param energy of the full bank, J
 * @param floor share of it below which the loads are cut off
 * @param start share of it at the beginning
 * @param efficiency share of what is charged that can be taken out again
 * @param mostCharging W at its poles; more than that goes to the dump load
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record YearBattery(double energy, double floor, double start, double efficiency, double mostCharging) {

    public YearBattery {
        if (!(energy > 0
                        && floor >= 0
                        && floor < 1
                        && start >= floor
                        && start <= 1
                        && efficiency > 0
                        && efficiency <= 1)
                || !(mostCharging > 0)) {
            throw new IllegalArgumentException(
                    "no bank: " + energy + " J, " + floor + ", " + start + ", " + efficiency);
        }
    }

    /** {@return the bank of a plant, full at the beginning, cut off at the depth its chemistry is used to} */
    public static YearBattery of(BatteryNumbers battery) {
        Amount most = battery.chargeCurrentLimit().times(battery.nominalVoltage());
        return new YearBattery(
                battery.storedEnergy(),
                1 - battery.usualDepthOfDischarge(),
                1,
                battery.usualEnergyEfficiency(),
                most.or(Double.MAX_VALUE));
    }
}
