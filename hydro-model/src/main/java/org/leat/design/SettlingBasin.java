package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** Still water in which sand settles. */
@About("Still water in which sand settles")
public record SettlingBasin(
        @About("along the flow") @Limits(above = 0) Quantity<Length> length,
        @About("across the flow") @Limits(above = 0) Quantity<Length> width,
        @About("of the water") @Limits(above = 0) Quantity<Length> depth) {

    public SettlingBasin {
        Demand.limits(SettlingBasin.class, length, width, depth).hold();
    }
}
