package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Si;

/**
 * Shaft power with nothing connected. One reading is taken as a torque that does not depend on speed; a second one tells
 * the part that grows with speed.
 */
@API(status = API.Status.STABLE, since = "0.1")
@About("Shaft power with nothing connected")
@Sample("{ power: 12 W, speed: 1000 rpm }")
public record NoLoadLoss(
        @About("to turn the machine") @Limits(atLeast = 0) Quantity<Power> power,

        @About("of the machine while turning") @Limits(above = 0)
        Quantity<RotationalSpeed> speed,

        @About("to turn the machine faster or slower") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Power> powerAtSecondSpeed,

        @About("of the machine at the second reading") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<RotationalSpeed> secondSpeed) {

    public NoLoadLoss {
        Demand demand = Demand.limits(NoLoadLoss.class, power, speed, powerAtSecondSpeed, secondSpeed)
                .that(
                        (powerAtSecondSpeed == null) == (secondSpeed == null),
                        "secondSpeed",
                        secondSpeed,
                        "both the second power and its speed, or neither");
        if (power != null && speed != null && powerAtSecondSpeed != null && secondSpeed != null) {
            double first = Si.of(speed);
            double second = Si.of(secondSpeed);
            demand.that(first != second, "secondSpeed", secondSpeed, "another speed than the first");
            double slow = first < second ? Si.of(power) / first : Si.of(powerAtSecondSpeed) / second;
            double fast = first < second ? Si.of(powerAtSecondSpeed) / second : Si.of(power) / first;
            double ratio = Math.max(first, second) / Math.min(first, second);
            // a hair of grace for readings that are exactly at an end
            demand.that(
                    fast >= slow * (1 - 1e-9) && fast <= slow * ratio * (1 + 1e-9),
                    "powerAtSecondSpeed",
                    powerAtSecondSpeed,
                    "a torque (power over speed) that grows with speed, no faster than in proportion to it");
        }
        demand.hold();
    }
}
