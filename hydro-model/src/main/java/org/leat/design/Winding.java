package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Measured;
import org.leat.quantity.Quantities.RotationalSpeed;

/** Resistance and inductance of the winding. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Resistance and inductance of the winding")
@Sample("{ resistance-between-leads: 0.2 \u03a9 }")
public record Winding(
        @About("between two leads") @Fact @Limits(above = 0) Measured<ElectricResistance> resistanceBetweenLeads,

        @About("of the winding while measured") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Temperature> resistanceTemperature,

        @About("between two leads") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Measured<ElectricInductance> inductanceBetweenLeads,

        @About("rms of a lead, all leads shorted, at the speed below") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> shortCircuitCurrent,

        @About("at which it was read") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<RotationalSpeed> shortCircuitSpeed,

        @About("star or delta") @CanBeAbsent @Nullable Connection connection,

        @About("of the winding while running") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Temperature> temperature,

        @About("whether star and delta can be changed") @CanBeAbsent @Nullable
        Boolean rewirable,

        @About("largest difference of the three open-circuit voltages")
        @Fact
        @Limits(atLeast = 0)
        @CanBeAbsent
        @Nullable
        Quantity<Dimensionless> spreadOfVoltages,

        @About("largest difference of the three resistances") @Fact @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Dimensionless> spreadOfResistances) {

    public Winding {
        Demand.limits(
                        Winding.class,
                        resistanceBetweenLeads,
                        resistanceTemperature,
                        inductanceBetweenLeads,
                        shortCircuitCurrent,
                        shortCircuitSpeed,
                        connection,
                        temperature,
                        rewirable,
                        spreadOfVoltages,
                        spreadOfResistances)
                .that(
                        (shortCircuitCurrent == null) == (shortCircuitSpeed == null),
                        "shortCircuitSpeed",
                        shortCircuitSpeed,
                        "both the short-circuit current and its speed, or neither")
                .hold();
    }
}
