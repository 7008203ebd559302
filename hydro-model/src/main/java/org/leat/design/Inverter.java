package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Makes alternating current from the battery. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Makes alternating current from the battery")
@Sample("{ continuous-power: 1200 W }")
public record Inverter(
        @About("direct voltage it accepts") @Fact @CanBeAbsent @Nullable
        VoltageRange inputVoltage,

        @About("that it stands without harm") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> inputVoltageLimit,

        @About("output") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Power> continuousPower,

        @About("output, a second") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Power> surgePower,

        @About("at working load") @Fact @Limits(above = 0, atMost = 1) @CanBeAbsent @Nullable
        Quantity<Dimensionless> efficiency,

        @About("own consumption") @Fact @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Power> standingPower,

        @About("at which it stops") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> cutOffVoltage,

        @About("whether its sockets have one") @CanBeAbsent @Nullable
        Boolean residualCurrentDevice) {

    public Inverter {
        Demand.limits(
                        Inverter.class,
                        inputVoltage,
                        inputVoltageLimit,
                        continuousPower,
                        surgePower,
                        efficiency,
                        standingPower,
                        cutOffVoltage,
                        residualCurrentDevice)
                .hold();
    }
}
