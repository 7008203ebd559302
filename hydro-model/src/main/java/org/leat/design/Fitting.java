package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Fittings of one kind. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Fittings of one kind")
@Sample("{ kind: bend-45, count: 3 }")
public record Fitting(
        @About("what it is") FittingKind kind,

        @About("how many; one if left out") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Integer count,

        @About("inside diameter where it differs from the pipe") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> bore,

        @About("on its own bore, in place of the table's") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Double lossCoefficient,

        @About("of a valve, shut by hand") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Time> closingTime,

        @About("of a bend") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Angle> angle) {

    public Fitting {
        Demand.limits(Fitting.class, kind, count, bore, lossCoefficient, closingTime, angle)
                .hold();
    }
}
