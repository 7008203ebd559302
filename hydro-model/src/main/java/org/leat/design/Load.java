package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Something that is run from the plant. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Something that is run from the plant")
@Sample("{ name: lamps, power: 60 W, hours-per-day: 5 h/d }")
public record Load(
        @About("what it is") String name,
        @About("of one, running") @Limits(above = 0) Quantity<Power> power,

        @About("how many; one if left out") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Integer count,

        @About("running time")
        @AlsoWritten({"# h", "# h/d", "# h/day", "# hr", "# hrs", "# hours", "# hours/day"})
        @Limits(atLeast = 0, atMost = 24)
        @CanBeAbsent
        @Nullable
        Double hoursPerDay,

        @About("starting over running power") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Double surgeFactor,

        @About("inverter if left out") @CanBeAbsent @Nullable
        LoadSupply supply,

        @About("for a vehicle or tool battery") @CanBeAbsent @Nullable
        VehiclePack pack) {

    public Load {
        Demand.limits(Load.class, name, power, count, hoursPerDay, surgeFactor, supply, pack)
                .hold();
    }
}
