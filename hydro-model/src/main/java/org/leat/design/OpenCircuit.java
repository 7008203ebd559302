package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Measured;
import org.leat.quantity.RotationalSpeed;
import org.leat.quantity.SpeedPerVoltage;

/** What was measured of the voltage, nothing connected. */
@About("What was measured of the voltage, nothing connected")
public sealed interface OpenCircuit {

    /**
     * Volts at one speed.
     *
     * @param voltage as read
     * @param speed while reading
     * @param between which points; two leads if left out
     * @param as what the reading says; rms if left out
     */
    @About("Volts at one speed")
    public record VoltsAtSpeed(
            @About("as read") @Limits(above = 0) Measured<ElectricPotential> voltage,
            @About("while reading") @Limits(above = 0) Quantity<RotationalSpeed> speed,

            @About("which points; two leads if left out") @Nullable
            VoltageBetween between,

            @About("what the reading says; rms if left out") @Nullable
            VoltageAs as)
            implements OpenCircuit {

        public VoltsAtSpeed {
            Demand.limits(VoltsAtSpeed.class, voltage, speed, between, as).hold();
        }
    }

    /**
     * The maker's speed per volt.
     *
     * @param speedPerVolt as marked
     * @param between which points the volt is between
     * @param as peak or rms volt; must be asked
     */
    @About("The maker's speed per volt")
    public record SpeedPerVolt(
            @About("as marked") @Limits(above = 0) Quantity<SpeedPerVoltage> speedPerVolt,

            @About("which points the volt is between") @Nullable
            VoltageBetween between,

            @About("peak or rms volt; must be asked") @Nullable
            VoltageAs as)
            implements OpenCircuit {

        public SpeedPerVolt {
            Demand.limits(SpeedPerVolt.class, speedPerVolt, between, as).hold();
        }
    }
}
