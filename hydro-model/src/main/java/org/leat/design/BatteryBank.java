package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Battery at the end of the bus.
 *
 * @param chemistry what it is made of
 * @param cellsInSeries cells from pole to pole
 * @param capacity of the whole bank, 20 hours for lead
 * @param strings in parallel; one if left out
 * @param stringsProtected whether each string has its own fuse
 * @param internalResistance of the whole bank
 * @param chargeCurrentLimit the maker's, whole bank
 * @param chargeVoltageLimit the maker's, whole bank
 * @param stateOfCharge at which the plant is judged while running
 * @param management what opens the battery by itself
 * @param lowestTemperature of the battery's room
 * @param heated whether it is kept above freezing
 * @param ventilation of the battery's room
 * @param autonomyWanted hours the loads must run with the turbine stopped
 * @param peukertExponent for lead
 */
@About("Battery at the end of the bus")
public record BatteryBank(
        @About("what it is made of") Chemistry chemistry,

        @About("cells from pole to pole") @Limits(atLeast = 1)
        int cellsInSeries,

        @About("of the whole bank, 20 hours for lead") @Limits(above = 0, atMost = 3.6e9)
        Quantity<ElectricCharge> capacity,

        @About("in parallel; one if left out") @Limits(atLeast = 1) @Nullable
        Integer strings,

        @About("whether each string has its own fuse") @Nullable
        Boolean stringsProtected,

        @About("of the whole bank") @Limits(above = 0) @Nullable
        Quantity<ElectricResistance> internalResistance,

        @About("the maker's, whole bank") @Limits(above = 0) @Nullable
        Quantity<ElectricCurrent> chargeCurrentLimit,

        @About("the maker's, whole bank") @Limits(above = 0) @Nullable
        Quantity<ElectricPotential> chargeVoltageLimit,

        @About("at which the plant is judged while running") @Limits(atLeast = 0, atMost = 1) @Nullable
        Quantity<Dimensionless> stateOfCharge,

        @About("what opens the battery by itself") @Nullable BatteryManagement management,

        @About("of the battery's room") @Limits(above = 0) @Nullable
        Quantity<Temperature> lowestTemperature,

        @About("whether it is kept above freezing") @Nullable
        Boolean heated,

        @About("of the battery's room") @Nullable Ventilation ventilation,

        @About("hours the loads must run with the turbine stopped") @Limits(atLeast = 0) @Nullable
        Quantity<Time> autonomyWanted,

        @About("for lead") @Limits(atLeast = 1, atMost = 2) @Nullable
        Double peukertExponent) {

    public BatteryBank {
        Demand.limits(
                        BatteryBank.class,
                        chemistry,
                        cellsInSeries,
                        capacity,
                        strings,
                        stringsProtected,
                        internalResistance,
                        chargeCurrentLimit,
                        chargeVoltageLimit,
                        stateOfCharge,
                        management,
                        lowestTemperature,
                        heated,
                        ventilation,
                        autonomyWanted,
                        peukertExponent)
                .hold();
    }
}
