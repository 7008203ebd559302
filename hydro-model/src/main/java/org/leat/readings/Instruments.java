package org.leat.readings;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Pressure;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.design.Limits;

/** How well the instruments show, where a reading has no ± of its own. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@About("How well the instruments show, where a reading has no ± of its own")
public record Instruments(
        @About("full scale of the pressure gauge") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Pressure> pressureFullScale,

        @About("class of the pressure gauge, of its full scale") @Limits(above = 0, atMost = 0.2) @CanBeAbsent @Nullable
        Quantity<Dimensionless> pressureClass,

        @About("of a flow, of what is read") @Limits(above = 0, atMost = 0.5) @CanBeAbsent @Nullable
        Quantity<Dimensionless> flow,

        @About("of a speed or a frequency, of what is read") @Limits(above = 0, atMost = 0.5) @CanBeAbsent @Nullable
        Quantity<Dimensionless> speed,

        @About("of volts, of what is read") @Limits(above = 0, atMost = 0.5) @CanBeAbsent @Nullable
        Quantity<Dimensionless> volts,

        @About("of amperes, of what is read") @Limits(above = 0, atMost = 0.5) @CanBeAbsent @Nullable
        Quantity<Dimensionless> amps) {

    public Instruments {
        Demand.limits(Instruments.class, pressureFullScale, pressureClass, flow, speed, volts, amps)
                .that(
                        (pressureFullScale == null) == (pressureClass == null),
                        "pressureClass",
                        pressureClass,
                        "both full scale and class, or neither")
                .hold();
    }
}
