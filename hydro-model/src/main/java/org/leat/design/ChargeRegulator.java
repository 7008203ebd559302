package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Quantities.VoltagePerTemperature;

/** What limits the battery's voltage. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What limits the battery's voltage")
@Sample("{ kind: diversion, absorption-voltage: 28.4 V }")
public record ChargeRegulator(
        @About("what it does when the battery is full") RegulatorKind kind,

        @About("that it stands at its input") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> inputVoltageLimit,

        @About("continuous") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> currentRating,

        @About("input voltages at which it tracks") @Fact @CanBeAbsent @Nullable
        VoltageRange trackingWindow,

        @About("input to output") @Fact @Limits(above = 0, atMost = 1) @CanBeAbsent @Nullable
        Quantity<Dimensionless> efficiency,

        @About("set point of the whole bank") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> absorptionVoltage,

        @About("set point of the whole bank") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> floatVoltage,

        @About("set point of the whole bank, if used") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> equalisingVoltage,

        @About("at which it sheds loads") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> cutOffVoltage,

        @About("of one cell, negative") @CanBeAbsent @Nullable
        Quantity<VoltagePerTemperature> temperatureCompensation,

        @About("its own consumption") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Power> standingPower) {

    public ChargeRegulator {
        Demand.limits(
                        ChargeRegulator.class,
                        kind,
                        inputVoltageLimit,
                        currentRating,
                        trackingWindow,
                        efficiency,
                        absorptionVoltage,
                        floatVoltage,
                        equalisingVoltage,
                        cutOffVoltage,
                        temperatureCompensation,
                        standingPower)
                .hold();
    }
}
