package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.design.Chemistry;
import org.leat.electrics.BatteryFaultCurrent;
import org.leat.electrics.ChargeCurrentLimit;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
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

    /** {@return whether it is of lead} */
    public boolean isLead() {
        return switch (chemistry) {
            case FLOODED_LEAD_ACID, AGM_LEAD_ACID, GEL_LEAD_ACID -> true;
            case LITHIUM_IRON_PHOSPHATE, LITHIUM_ION -> false;
        };
    }

    /** {@return voltage of the bank by which it is named, V} */
    public double nominalVoltage() {
        return cellsInSeries * CellChemistryCatalogue.usual(chemistry, CellProperty.NOMINAL_VOLTAGE);
    }

    /** {@return energy of the bank at its nominal voltage, J} */
    public double storedEnergy() {
        return capacity * cellsInSeries * CellChemistryCatalogue.usual(chemistry, CellProperty.NOMINAL_VOLTAGE);
    }

    /** {@return share of its energy that its chemistry gives day by day} */
    public double usualDepthOfDischarge() {
        return CellChemistryCatalogue.usual(chemistry, CellProperty.DEPTH_OF_DISCHARGE);
    }

    /** {@return energy out over energy in, usual for its chemistry} */
    public double usualEnergyEfficiency() {
        return CellChemistryCatalogue.usual(chemistry, CellProperty.ENERGY_EFFICIENCY);
    }

    /** {@return mean current below which lead of this capacity sulphates, A} */
    public double leastMeanCurrentForLead() {
        return ChargeCurrentLimit.leastMeanForLead(capacity);
    }

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

    /** {@return the same bank as empty as loads may leave it} */
    public BatteryNumbers flat() {
        double empty = cellsInSeries * CellChemistryCatalogue.usual(chemistry, CellProperty.LOW_VOLTAGE_DISCONNECT);
        return withStateOfCharge(0).withRestingVoltage(Math.min(empty, restingVoltage));
    }
}
