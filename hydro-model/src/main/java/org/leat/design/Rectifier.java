package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Quantities.ThermalResistance;

/** Three-phase diode bridge. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Three-phase diode bridge")
@Sample("{ average-current: 35 A, repetitive-peak-reverse-voltage: 600 V }")
public record Rectifier(
        @About("of each diode") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> repetitivePeakReverseVoltage,

        @About("of the whole bridge, direct, at its case temperature") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> averageCurrent,

        @About("at working current") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> dropPerDiode,

        @About("of one diode") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<ElectricResistance> slopeResistance,

        @About("bridge and heat sink together") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ThermalResistance> junctionToAir,

        @About("of the diodes") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Temperature> junctionLimit,

        @About("across the output") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCapacitance> capacitance,

        @About("rating of that capacitor") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> capacitorVoltage,

        @About("whether the capacitor is charged before it is connected") @CanBeAbsent @Nullable
        Boolean precharged) {

    public Rectifier {
        Demand.limits(
                        Rectifier.class,
                        repetitivePeakReverseVoltage,
                        averageCurrent,
                        dropPerDiode,
                        slopeResistance,
                        junctionToAir,
                        junctionLimit,
                        capacitance,
                        capacitorVoltage,
                        precharged)
                .hold();
    }
}
