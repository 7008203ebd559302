package org.leat.design;

import org.jspecify.annotations.Nullable;

/**
 * Guards, earthing and means to stop, as built.
 *
 * @param runnerGuard fixed guard over rotating parts
 * @param frameEarthed metal frame and penstock bonded to earth
 * @param poleEarthed one pole of the battery earthed, at one point
 * @param liveParts whether live parts can be touched
 * @param wetPlace whether the turbine house is wet
 * @param jetCanStrike whether a jet, turned aside or thrown from the runner, can strike the alternator
 * @param batteryIsolator means to isolate the battery
 * @param turbineIsolator means to isolate the turbine side
 * @param stopWater what stops the water from the jet
 * @param secondOvervoltageGuard an independent second means against overvoltage
 * @param shortCircuitBrake shorted leads counted on as a brake
 */
@About("Guards, earthing and means to stop, as built")
public record Safeguards(
        @About("fixed guard over rotating parts") @Nullable Boolean runnerGuard,

        @About("metal frame and penstock bonded to earth") @Nullable
        Boolean frameEarthed,

        @About("one pole of the battery earthed, at one point") @Nullable
        Boolean poleEarthed,

        @About("whether live parts can be touched") @Nullable
        LiveParts liveParts,

        @About("whether the turbine house is wet") @Nullable Boolean wetPlace,

        @About("whether a jet, turned aside or thrown from the runner, can strike the alternator") @Nullable
        Boolean jetCanStrike,

        @About("means to isolate the battery") @Nullable Boolean batteryIsolator,

        @About("means to isolate the turbine side") @Nullable
        Boolean turbineIsolator,

        @About("what stops the water from the jet") @Nullable
        StopWater stopWater,

        @About("an independent second means against overvoltage") @Nullable
        Boolean secondOvervoltageGuard,

        @About("shorted leads counted on as a brake") @Nullable
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
