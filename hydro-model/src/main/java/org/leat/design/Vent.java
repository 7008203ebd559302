package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Way for air into the pipe. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Way for air into the pipe")
@Sample("{ bore: 25 mm }")
public record Vent(
        @About("of the vent pipe") @Limits(above = 0) Quantity<Length> bore,

        @About("whether it sits below the shut-off it protects from") @CanBeAbsent @Nullable
        Boolean belowValve,

        @About("whether it stays open in frost: heated, sheltered or doubled") @CanBeAbsent @Nullable
        Boolean frostProof) {

    public Vent {
        Demand.limits(Vent.class, bore, belowValve, frostProof).hold();
    }
}
