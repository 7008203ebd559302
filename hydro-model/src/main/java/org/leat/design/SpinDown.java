package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Quantities.MomentOfInertia;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Si;

/**
 * Coasting with nothing connected: what iron and friction take. One time is taken as a torque that does not depend on
 * speed; a second one, further down, tells the part that grows with speed.
 */
@API(status = API.Status.STABLE, since = "0.1")
@About("Coasting with nothing connected")
public record SpinDown(
        @About("of everything that coasts, as felt at the alternator's shaft") @Limits(above = 0)
        Quantity<MomentOfInertia> inertia,

        @About("speed of the alternator when the watch was started") @Limits(above = 0)
        Quantity<RotationalSpeed> from,

        @About("speed of the alternator when it was read") @Limits(atLeast = 0)
        Quantity<RotationalSpeed> to,

        @About("from the one to the other") @Limits(above = 0)
        Quantity<Time> time,

        @About("speed at which it was read again") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<RotationalSpeed> toSecond,

        @About("from the first reading to the second") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Time> secondTime) {

    public SpinDown {
        Demand demand = Demand.limits(SpinDown.class, inertia, from, to, time, toSecond, secondTime)
                .that(
                        (toSecond == null) == (secondTime == null),
                        "secondTime",
                        secondTime,
                        "both the second speed and its time, or neither")
                .that(from == null || to == null || Si.of(to) < Si.of(from), "to", to, "a speed below the first");
        if (from != null && to != null && time != null && toSecond != null && secondTime != null) {
            double fast = Si.of(from);
            double middle = Si.of(to);
            double slow = Si.of(toSecond);
            boolean falls = slow < middle && middle < fast;
            demand.that(falls, "toSecond", toSecond, "a speed below the one before");
            double first = Si.of(time);
            double second = Si.of(secondTime);
            boolean grows = (fast - middle) / first >= (middle - slow) / second * (1 - 1e-9);
            boolean notFaster =
                    slow <= 0 || Math.log(fast / middle) / first <= Math.log(middle / slow) / second * (1 + 1e-9);
            demand.that(
                    !falls || (grows && notFaster),
                    "secondTime",
                    secondTime,
                    "a torque that grows with speed, no faster than in proportion to it");
        }
        demand.hold();
    }
}
