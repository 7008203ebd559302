package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Measured;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Quantities.SpeedPerVoltage;

/** What was measured of the voltage, nothing connected. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What was measured of the voltage, nothing connected")
@Sample("{ kind: volts-at-speed, voltage: 21 V, speed: 1000 rpm }")
public sealed interface OpenCircuit {

    /** Volts at one speed. */
    @About("Volts at one speed")
    public record VoltsAtSpeed(
            @About("as read") @Fact @Limits(above = 0) Measured<ElectricPotential> voltage,
            @About("while reading") @Fact @Limits(above = 0) Quantity<RotationalSpeed> speed,

            @About("which points; two leads if left out") @CanBeAbsent @Nullable
            VoltageBetween between,

            @About("what the reading says; rms if left out") @CanBeAbsent @Nullable
            VoltageAs as)
            implements OpenCircuit {

        public VoltsAtSpeed {
            Demand.limits(VoltsAtSpeed.class, voltage, speed, between, as).hold();
        }
    }

    /** The maker's speed per volt. */
    @About("The maker's speed per volt")
    public record SpeedPerVolt(
            @About("as marked") @Fact @Limits(above = 0) Quantity<SpeedPerVoltage> speedPerVolt,

            @About("which points the volt is between") @CanBeAbsent @Nullable
            VoltageBetween between,

            @About("peak or rms volt; must be asked") @CanBeAbsent @Nullable
            VoltageAs as)
            implements OpenCircuit {

        public SpeedPerVolt {
            Demand.limits(SpeedPerVolt.class, speedPerVolt, between, as).hold();
        }
    }
}
