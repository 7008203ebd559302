package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Quantities.VolumeFlow;

/** What the stream brings and what must stay in it. */
@API(status = API.Status.STABLE, since = "0.1")
@About("What the stream brings and what must stay in it")
@Sample("{ flow: 3 L/s }")
public record Stream(
        @About("measured or known flow") StreamFlow flow,

        @About("residual flow left in the bed, as the local authority asks") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<VolumeFlow> keptInStream,

        @About("share of the year in which the pipe must stay full")
        @Limits(atLeast = 0, atMost = 1)
        @CanBeAbsent
        @Nullable
        Quantity<Dimensionless> fullPipeShare) {

    public Stream {
        Demand.limits(Stream.class, flow, keptInStream, fullPipeShare).hold();
    }
}
