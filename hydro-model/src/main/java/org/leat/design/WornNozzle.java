package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * A nozzle that has been in use. Where several of one bore are open, the one measured widest stands for all of them.
 */
@API(status = API.Status.STABLE, since = "0.1")
@About("A nozzle that has been in use; of several of one bore the one measured widest stands for all")
public record WornNozzle(
        @About("bore when new, as listed among those open") @Limits(above = 0)
        Quantity<Length> drilled,

        @About("bore now") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> measured,

        @About("since it was new") @Fact @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Time> runningTime,

        @About("whether the bore is of hardened steel, hard metal or ceramic") @CanBeAbsent @Nullable
        Boolean hardFaced) {

    public WornNozzle {
        Demand.limits(WornNozzle.class, drilled, measured, runningTime, hardFaced)
                .hold();
    }
}
