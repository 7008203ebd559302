package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.apiguardian.api.API;
import org.leat.quantity.Quantities.VolumeFlow;

/** One point of a flow-duration curve. */
@API(status = API.Status.STABLE, since = "0.1")
@About("One point of a flow-duration curve")
public record DurationPoint(
        @About("share of the year in which the flow is reached or exceeded") @Limits(atLeast = 0, atMost = 1)
        Quantity<Dimensionless> exceeded,

        @About("the flow") @Limits(atLeast = 0) Quantity<VolumeFlow> flow) {

    public DurationPoint {
        Demand.limits(DurationPoint.class, exceeded, flow).hold();
    }
}
