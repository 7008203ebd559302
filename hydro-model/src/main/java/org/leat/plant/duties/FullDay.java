package org.leat.plant.duties;

import org.leat.electrics.EnergyBalance;
import org.leat.plant.cases.Running;
import org.leat.plant.loads.DailyUse;
import org.leat.plant.numbers.BatteryNumbers;

/**
 * A day of full use at one flow of the stream. All that is used is taken to pass through the battery.
 *
 * @param running at that flow
 * @param generated at the battery's poles, J
 * @param needed by the loads, with the inverter's and the battery's losses, J
 * @param surplus mean power left over, W; below zero the day falls short
 * @param drawn the most the battery gives, all loads beginning together while the turbine goes on, J
 * @param depth that over the energy of the bank; above one where the bank is too small
 */
public record FullDay(Running running, double generated, double needed, double surplus, double drawn, double depth) {

    private static final double DAY = 86_400;

    /** {@return the day of a running plant} */
    public static FullDay of(Running running, DailyUse use, BatteryNumbers battery) {
        double power = running.operatingPoint().batteryPower();
        EnergyBalance balance =
                EnergyBalance.ofDay(Math.max(0, power), use.energy(), 1, battery.usualEnergyEfficiency());
        double drawn = use.mostDrawn(power);
        return new FullDay(
                running,
                balance.generated(),
                balance.powerNeeded() * DAY,
                balance.surplus() / DAY,
                drawn,
                drawn / battery.storedEnergy());
    }
}
