package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * How a runner sits on its shaft.
 *
 * @param shaftDiameter at the runner
 * @param bolts through the hub
 * @param boltDiameter nominal
 * @param boltCircle diameter
 */
@About("How a runner sits on its shaft")
public record Hub(
        @About("at the runner") @Limits(above = 0) @Nullable Quantity<Length> shaftDiameter,

        @About("through the hub") @Limits(atLeast = 1) @Nullable
        Integer bolts,

        @About("nominal") @Limits(above = 0) @Nullable Quantity<Length> boltDiameter,
        @About("diameter") @Limits(above = 0) @Nullable Quantity<Length> boltCircle) {

    public Hub {
        Demand.limits(Hub.class, shaftDiameter, bolts, boltDiameter, boltCircle).hold();
    }
}
