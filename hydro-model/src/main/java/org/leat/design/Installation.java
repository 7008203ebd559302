package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * How a cable is laid.
 *
 * @param method reference method of IEC 60364-5-52
 * @param insulation of the cores
 * @param ambient of air or ground around it
 * @param groupedCircuits loaded circuits side by side
 */
@About("How a cable is laid")
public record Installation(
        @About("reference method of IEC 60364-5-52") @Nullable
        LayingMethod method,

        @About("of the cores") @Nullable CableInsulation insulation,

        @About("of air or ground around it") @Limits(above = 0) @Nullable
        Quantity<Temperature> ambient,

        @About("loaded circuits side by side") @Limits(atLeast = 1) @Nullable
        Integer groupedCircuits) {

    public Installation {
        Demand.limits(Installation.class, method, insulation, ambient, groupedCircuits)
                .hold();
    }
}
