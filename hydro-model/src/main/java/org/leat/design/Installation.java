package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** How a cable is laid. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How a cable is laid")
public record Installation(
        @About("reference method of IEC 60364-5-52") @CanBeAbsent @Nullable
        LayingMethod method,

        @About("of the cores") @CanBeAbsent @Nullable CableInsulation insulation,

        @About("of air or ground around it") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Temperature> ambient,

        @About("loaded circuits side by side") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Integer groupedCircuits,

        @About("how the conductors lie to each other") @CanBeAbsent @Nullable
        CoreArrangement cores,

        @About("between neighbours of open wires, centre to centre")
        @Limits(atLeast = 0.001, atMost = 10)
        @CanBeAbsent
        @Nullable
        Quantity<Length> wireSpacing) {

    public Installation {
        Demand.limits(Installation.class, method, insulation, ambient, groupedCircuits, cores, wireSpacing)
                .hold();
    }
}
