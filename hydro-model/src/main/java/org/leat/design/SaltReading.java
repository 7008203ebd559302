package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.leat.quantity.Quantities.Conductivity;

/** One reading of a salt dilution. */
@API(status = API.Status.STABLE, since = "0.1")
@About("One reading of a salt dilution")
public record SaltReading(
        @About("since the slug") @Limits(atLeast = 0) Quantity<Time> time,
        @About("of the water") @Limits(atLeast = 0) Quantity<Conductivity> conductivity) {

    public SaltReading {
        Demand.limits(SaltReading.class, time, conductivity).hold();
    }
}
