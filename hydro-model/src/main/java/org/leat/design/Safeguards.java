package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
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

        @About("what that second means is") @CanBeAbsent @Nullable
        SecondGuard secondGuard,

        @About("shorted leads counted on as a brake") @CanBeAbsent @Nullable
        Boolean shortCircuitBrake) {

    /** The second means against overvoltage. */
    @About("The second means against overvoltage")
    @Sample("{ kind: deflector, trigger-voltage: 32 V }")
    public record SecondGuard(
            @About("what it is") GuardKind kind,

            @About(
                    "whose voltage it watches where a regulator stands between bridge and battery; the bridge's if left out")
            @CanBeAbsent
            @Nullable
            DumpSide side,

            @About("of the side that it watches, at which it comes in") @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<ElectricPotential> triggerVoltage,

            @About("that it takes for ever at that voltage; of what stops the water none")
            @Fact
            @Limits(above = 0)
            @CanBeAbsent
            @Nullable
            Quantity<Power> power) {

        public SecondGuard {
            Demand.limits(SecondGuard.class, kind, side, triggerVoltage, power).hold();
        }
    }

    /** What a second means against overvoltage is. */
    @About("What a second means against overvoltage is")
    public enum GuardKind {
        /** a second dump load with a switch of its own. */
        DUMP_LOAD,
        /** a clamp of semiconductors that takes the power itself. */
        CLAMP,
        /** a plate that drops into the jet, or whatever else takes the water from the wheel. */
        DEFLECTOR
    }

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
                        secondGuard,
                        shortCircuitBrake)
                .hold();
    }
}
