package org.leat.plant.numbers;

import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.design.Chemistry;
import org.leat.electrics.BatteryFaultCurrent;

/**
 * Battery, in SI.
 *
 * @param chemistry what it is made of
 * @param cellsInSeries from pole to pole
 * @param capacity of the whole bank, C
 * @param stateOfCharge at which the plant is judged while running
 * @param restingVoltage of the bank at that state of charge, V
 * @param internalResistance of the bank, Ω
 * @param chargeCurrentLimit of the bank, A
 * @param chargeVoltageLimit of the bank, V
 * @param absorptionVoltage of the bank: the regulator's set point, else the chemistry's, V
 */
@Withers
public record BatteryNumbers(
        Chemistry chemistry,
        int cellsInSeries,
        double capacity,
        double stateOfCharge,
        double restingVoltage,
        double internalResistance,
        Amount chargeCurrentLimit,
        Amount chargeVoltageLimit,
        double absorptionVoltage)
        implements BatteryNumbersBuilder.With {

    /** {@return the same bank with another number of cells in series and the same stored energy} */
    @Override
    public BatteryNumbers withCellsInSeries(int cells) {
        double ratio = (double) cells / cellsInSeries;
        return new BatteryNumbers(
                chemistry,
                cells,
                capacity / ratio,
                stateOfCharge,
                restingVoltage * ratio,
                internalResistance * ratio * ratio,
                chargeCurrentLimit.times(1 / ratio),
                chargeVoltageLimit.times(ratio),
                absorptionVoltage * ratio);
    }

    /**
     * {@return current of the full bank whose poles are joined by a fault, A}
     *
     * @param loop resistance of the fault's way, there and back, Ω
     */
    public double faultCurrent(double loop) {
        double full = cellsInSeries * CellChemistryCatalogue.openCircuitVoltage(chemistry, 1);
        return BatteryFaultCurrent.at(full, internalResistance, loop);
    }
}
