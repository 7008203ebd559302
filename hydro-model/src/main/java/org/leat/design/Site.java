package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** The stream, its fall and its weather. */
@API(status = API.Status.STABLE, since = "0.1")
@About("The stream, its fall and its weather")
@Sample("{ gross-head: 24 m }")
public record Site(
        @About("fall from intake water level to nozzle axis")
        GrossHead grossHead,

        @About("height above the sea") @Limits(atLeast = -430, atMost = 6000) @CanBeAbsent @Nullable
        Quantity<Length> altitude,

        @About("of the water over the year") @CanBeAbsent @Nullable
        TemperatureRange waterTemperature,

        @About("of the air over the year") @CanBeAbsent @Nullable
        TemperatureRange airTemperature,

        @About("what the stream brings and what must stay in it") @CanBeAbsent @Nullable
        Stream stream,

        @About("of the lowest electric part above the highest flood known; less than nil below it")
        @Limits(atLeast = -100, atMost = 1000)
        @CanBeAbsent
        @Nullable
        Quantity<Length> freeboard) {

    public Site {
        Demand.limits(Site.class, grossHead, altitude, waterTemperature, airTemperature, stream, freeboard)
                .hold();
    }
}
