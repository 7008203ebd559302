package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;

/** Still water in which sand settles. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Still water in which sand settles")
public record SettlingBasin(
        @About("along the flow") @Limits(above = 0) Quantity<Length> length,
        @About("across the flow") @Limits(above = 0) Quantity<Length> width,
        @About("of the water") @Limits(above = 0) Quantity<Length> depth) {

    public SettlingBasin {
        Demand.limits(SettlingBasin.class, length, width, depth).hold();
    }
}
