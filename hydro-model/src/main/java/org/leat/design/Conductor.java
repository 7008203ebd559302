package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Copper or aluminium of one core. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Copper or aluminium of one core")
public record Conductor(
        @About("cross-section") @Limits(above = 0) Quantity<Area> area,
        @About("copper if left out") @CanBeAbsent @Nullable ConductorMaterial material,

        @About("stranded or flexible") @CanBeAbsent @Nullable
        Stranding stranding,

        @About("cores in parallel; one if left out") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Integer parallel) {

    public Conductor {
        Demand.limits(Conductor.class, area, material, stranding, parallel).hold();
    }
}
