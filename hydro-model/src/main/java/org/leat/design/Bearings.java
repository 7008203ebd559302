package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Bearings of the shaft. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Bearings of the shaft")
public record Bearings(
        @About("basic dynamic load rating C") @Fact @Limits(above = 0)
        Quantity<Force> dynamicRating,

        @About("of the runner beyond the near bearing") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Length> overhang,

        @About("between the bearings") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> spacing,

        @About("roller in place of ball bearings") @CanBeAbsent @Nullable
        Boolean roller) {

    public Bearings {
        Demand.limits(Bearings.class, dynamicRating, overhang, spacing, roller).hold();
    }
}
