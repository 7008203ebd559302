package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Measured;
import org.leat.quantity.RotationalSpeed;

/**
 * Resistance and inductance of the winding.
 *
 * @param resistanceBetweenLeads between two leads
 * @param resistanceTemperature of the winding while measured
 * @param inductanceBetweenLeads between two leads
 * @param shortCircuitCurrent rms of a lead, all leads shorted, at the speed below
 * @param shortCircuitSpeed at which it was read
 * @param connection star or delta
 * @param temperature of the winding while running
 * @param rewirable whether star and delta can be changed
 * @param spreadOfVoltages largest difference of the three open-circuit voltages
 * @param spreadOfResistances largest difference of the three resistances
 */
@About("Resistance and inductance of the winding")
public record Winding(
        @About("between two leads") @Limits(above = 0) Measured<ElectricResistance> resistanceBetweenLeads,

        @About("of the winding while measured") @Limits(above = 0) @Nullable
        Quantity<Temperature> resistanceTemperature,

        @About("between two leads") @Limits(above = 0) @Nullable
        Measured<ElectricInductance> inductanceBetweenLeads,

        @About("rms of a lead, all leads shorted, at the speed below") @Limits(above = 0) @Nullable
        Quantity<ElectricCurrent> shortCircuitCurrent,

        @About("at which it was read") @Limits(above = 0) @Nullable
        Quantity<RotationalSpeed> shortCircuitSpeed,

        @About("star or delta") @Nullable Connection connection,

        @About("of the winding while running") @Limits(above = 0) @Nullable
        Quantity<Temperature> temperature,

        @About("whether star and delta can be changed") @Nullable
        Boolean rewirable,

        @About("largest difference of the three open-circuit voltages") @Limits(atLeast = 0) @Nullable
        Quantity<Dimensionless> spreadOfVoltages,

        @About("largest difference of the three resistances") @Limits(atLeast = 0) @Nullable
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
