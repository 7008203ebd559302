package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** How a runner sits on its shaft. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How a runner sits on its shaft")
public record Hub(
        @About("at the runner") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> shaftDiameter,

        @About("through the hub") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Integer bolts,

        @About("nominal") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> boltDiameter,

        @About("diameter") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> boltCircle) {

    public Hub {
        Demand.limits(Hub.class, shaftDiameter, bolts, boltDiameter, boltCircle).hold();
    }
}
