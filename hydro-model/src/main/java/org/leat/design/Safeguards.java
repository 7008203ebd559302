package org.leat.design;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Guards, earthing and means to stop, as built. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Guards, earthing and means to stop, as built")
public record Safeguards(
        @About("fixed guard over rotating parts") @CanBeAbsent @Nullable
        Boolean runnerGuard,

        @About("metal frame and penstock bonded to earth") @CanBeAbsent @Nullable
        Boolean frameEarthed,

        @About("one pole of the battery earthed, at one point") @CanBeAbsent @Nullable
        Boolean poleEarthed,

        @About("whether live parts can be touched") @CanBeAbsent @Nullable
        LiveParts liveParts,

        @About("whether the turbine house is wet") @CanBeAbsent @Nullable
        Boolean wetPlace,

        @About("whether a jet, turned aside or thrown from the runner, can strike the alternator")
        @CanBeAbsent
        @Nullable
        Boolean jetCanStrike,

        @About("means to isolate the battery") @CanBeAbsent @Nullable
        Boolean batteryIsolator,

        @About("means to isolate the turbine side") @CanBeAbsent @Nullable
        Boolean turbineIsolator,

        @About("what stops the water from the jet") @CanBeAbsent @Nullable
        StopWater stopWater,

        @About("an independent second means against overvoltage") @CanBeAbsent @Nullable
        Boolean secondOvervoltageGuard,

        @About("shorted leads counted on as a brake") @CanBeAbsent @Nullable
        Boolean shortCircuitBrake) {

    public Safeguards {
        Demand.limits(
                        Safeguards.class,
                        runnerGuard,
                        frameEarthed,
                        poleEarthed,
                        liveParts,
                        wetPlace,
                        jetCanStrike,
                        batteryIsolator,
                        turbineIsolator,
                        stopWater,
                        secondOvervoltageGuard,
                        shortCircuitBrake)
                .hold();
    }
}
