package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** The buckets of a runner. */
@API(status = API.Status.STABLE, since = "0.1")
@About("The buckets of a runner")
public record Buckets(
        @About("how many") @Limits(atLeast = 1) @CanBeAbsent @Nullable
        Integer count,

        @About("inside, across the jet") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> width,

        @About("inside, along the radius") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> length,

        @About("inside") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> depth,

        @About("of one bucket") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Mass> mass,

        @About("of the neck that carries one bucket, across the bending") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> rootWidth,

        @About("of the neck, along the bending") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> rootThickness,

        @About("from the jet's centre to the neck") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> leverArm,

        @About("as the materials table names it") @CanBeAbsent @Nullable
        String material,

        @About("how they were made") @CanBeAbsent @Nullable Making making,

        @About("of a test bar in the weakest direction") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Pressure> strength,

        @About("whether bending pulls printed layers apart") @CanBeAbsent @Nullable
        Boolean layersAcrossBending,

        @About("running time in a year") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Time> hoursPerYear) {

    public Buckets {
        Demand.limits(
                        Buckets.class,
                        count,
                        width,
                        length,
                        depth,
                        mass,
                        rootWidth,
                        rootThickness,
                        leverArm,
                        material,
                        making,
                        strength,
                        layersAcrossBending,
                        hoursPerYear)
                .hold();
    }
}
