package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Battery at the end of the bus. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Battery at the end of the bus")
@Sample("{ chemistry: lithium-iron-phosphate, cells-in-series: 8, capacity: 100 Ah }")
public record BatteryBank(
        @About("what it is made of") Chemistry chemistry,

        @About("cells from pole to pole") @Limits(atLeast = 1)
        int cellsInSeries,

        @About("of the whole bank, 20 hours for lead") @Limits(above = 0, atMost = 3.6e9)
        Quantity<ElectricCharge> capacity,

        @About("in parallel; one if left out") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Integer strings,

        @About("whether each string has its own fuse") @CanBeAbsent @Nullable
        Boolean stringsProtected,

        @About("of the whole bank") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricResistance> internalResistance,

        @About("the maker's, whole bank") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> chargeCurrentLimit,

        @About("the maker's, whole bank") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> chargeVoltageLimit,

        @About("at which the plant is judged while running") @Limits(atLeast = 0, atMost = 1) @CanBeAbsent @Nullable
        Quantity<Dimensionless> stateOfCharge,

        @About("what opens the battery by itself") @CanBeAbsent @Nullable
        BatteryManagement management,

        @About("of the battery's room") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Temperature> lowestTemperature,

        @About("whether it is kept above freezing") @CanBeAbsent @Nullable
        Boolean heated,

        @About("of the battery's room") @CanBeAbsent @Nullable
        Ventilation ventilation,

        @About("hours the loads must run with the turbine stopped") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Time> autonomyWanted,

        @About("for lead") @Limits(atLeast = 1, atMost = 2) @CanBeAbsent @Nullable
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
