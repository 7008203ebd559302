package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Wheel the jets drive. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Wheel the jets drive")
@Sample("{ kind: pelton, pitch-diameter: 160 mm }")
public record Runner(
        @About("how it turns the jet") RunnerKind kind,

        @About("of the circle the jet touches") @Limits(above = 0)
        Quantity<Length> pitchDiameter,

        @About("their number, size and make") @CanBeAbsent @Nullable
        Buckets buckets,

        @About("of the jet against the wheel's plane") @Limits(atLeast = 0, atMost = 1.2) @CanBeAbsent @Nullable
        Quantity<Angle> jetAngle,

        @About("best, jet to shaft") @Limits(above = 0, atMost = 1) @CanBeAbsent @Nullable
        Quantity<Dimensionless> measuredEfficiency,

        @About("runaway over best speed, where measured") @Limits(above = 1, atMost = 2.5) @CanBeAbsent @Nullable
        Double runawayFactor,

        @About("that carry it") @CanBeAbsent @Nullable Bearings bearings,

        @About("wheel's lowest point above tail water") @CanBeAbsent @Nullable
        Quantity<Length> tailwaterClearance,

        @About("the same in flood") @CanBeAbsent @Nullable Quantity<Length> floodClearance,

        @About("of the turning parts") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Mass> mass,

        @About("how it sits on the shaft") @CanBeAbsent @Nullable
        Hub hub) {

    public Runner {
        Demand.limits(
                        Runner.class,
                        kind,
                        pitchDiameter,
                        buckets,
                        jetAngle,
                        measuredEfficiency,
                        runawayFactor,
                        bearings,
                        tailwaterClearance,
                        floodClearance,
                        mass,
                        hub)
                .hold();
    }
}
