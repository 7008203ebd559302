package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Quantities.VolumeFlow;

/** Air for the battery's room. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Air for the battery's room")
public record Ventilation(
        @About("of each of two openings, low and high") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Area> openingArea,

        @About("of a fan") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<VolumeFlow> airFlow,

        @About("whether people sleep or sparks occur in the same air") @CanBeAbsent @Nullable
        Boolean livingSpace,

        @About("from the nearest vent of a cell to what glows or sparks: relay, switch, fuse, brushes")
        @Limits(atLeast = 0)
        @CanBeAbsent
        @Nullable
        Quantity<Length> sparkDistance,

        @About("that gas through one vent: one of a cell of its own, six of a block with a common vent")
        @Limits(atLeast = 1)
        @CanBeAbsent
        @Nullable
        Integer cellsBehindOneVent) {

    public Ventilation {
        Demand.limits(Ventilation.class, openingArea, airFlow, livingSpace, sparkDistance, cellsBehindOneVent)
                .hold();
    }
}
