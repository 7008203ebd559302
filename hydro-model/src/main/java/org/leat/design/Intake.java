package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Where the water is taken. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Where the water is taken")
@Sample("{ submergence: 0.4 m }")
public record Intake(
        @About("what keeps leaves and stones out") @CanBeAbsent @Nullable
        Screen screen,

        @About("lowest water level above the crown of the pipe") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Length> submergence,

        @About("still water in which sand settles") @CanBeAbsent @Nullable
        SettlingBasin basin,

        @About("way for air into the pipe below a shut-off at the top") @CanBeAbsent @Nullable
        Vent vent,

        @About("of a valve at the intake, shut by hand") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Time> valveClosingTime,

        @About("between cleanings of the screen while leaves fall") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Time> cleaningInterval,

        @About("whether depth, heating or a stop on clear cold nights keeps ice off the screen") @CanBeAbsent @Nullable
        Boolean iceKeptOff) {

    public Intake {
        Demand.limits(Intake.class, screen, submergence, basin, vent, valveClosingTime, cleaningInterval, iceKeptOff)
                .hold();
    }
}
