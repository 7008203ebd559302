package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** A vehicle or tool battery charged from the plant. */
@API(status = API.Status.STABLE, since = "0.1")
@About("A vehicle or tool battery charged from the plant")
public record VehiclePack(
        @About("of one pack") @Limits(above = 0) Quantity<Energy> energy,
        @About("of the pack") @Limits(atLeast = 1) int cellsInSeries,

        @About("whether it is charged through its own charger") @CanBeAbsent @Nullable
        Boolean ownCharger) {

    public VehiclePack {
        Demand.limits(VehiclePack.class, energy, cellsInSeries, ownCharger).hold();
    }
}
