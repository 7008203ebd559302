package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Fittings of one kind.
 *
 * @param kind what it is
 * @param count how many; one if left out
 * @param bore inside diameter where it differs from the pipe
 * @param lossCoefficient on its own bore, in place of the table's
 * @param closingTime of a valve, shut by hand
 * @param angle of a bend
 */
@About("Fittings of one kind")
public record Fitting(
        @About("what it is") FittingKind kind,

        @About("how many; one if left out") @Limits(atLeast = 1) @Nullable
        Integer count,

        @About("inside diameter where it differs from the pipe") @Limits(above = 0) @Nullable
        Quantity<Length> bore,

        @About("on its own bore, in place of the table's") @Limits(atLeast = 0) @Nullable
        Double lossCoefficient,

        @About("of a valve, shut by hand") @Limits(atLeast = 0) @Nullable
        Quantity<Time> closingTime,

        @About("of a bend") @Limits(above = 0) @Nullable Quantity<Angle> angle) {

    public Fitting {
        Demand.limits(Fitting.class, kind, count, bore, lossCoefficient, closingTime, angle)
                .hold();
    }
}
