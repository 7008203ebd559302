package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The stream, its fall and its weather.
 *
 * @param grossHead fall from intake water level to nozzle axis
 * @param altitude height above the sea
 * @param waterTemperature of the water over the year
 * @param airTemperature of the air over the year
 * @param stream what the stream brings and what must stay in it
 */
@About("The stream, its fall and its weather")
public record Site(
        @About("fall from intake water level to nozzle axis")
        GrossHead grossHead,

        @About("height above the sea") @Limits(atLeast = -430, atMost = 6000) @Nullable
        Quantity<Length> altitude,

        @About("of the water over the year") @Nullable TemperatureRange waterTemperature,
        @About("of the air over the year") @Nullable TemperatureRange airTemperature,

        @About("what the stream brings and what must stay in it") @Nullable
        Stream stream) {

    public Site {
        Demand.limits(Site.class, grossHead, altitude, waterTemperature, airTemperature, stream)
                .hold();
    }
}
