package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import org.leat.quantity.Si;

/** Lowest and highest temperature met in a year. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Lowest and highest temperature met in a year")
public record TemperatureRange(
        @About("coldest met") @Limits(above = 0) Quantity<Temperature> lowest,
        @About("hottest met") @Limits(above = 0) Quantity<Temperature> highest) {

    public TemperatureRange {
        Demand.limits(TemperatureRange.class, lowest, highest)
                .that(
                        Si.of(highest) >= Si.of(lowest),
                        "highest",
                        highest,
                        "at least the lowest, " + Demand.print(lowest))
                .hold();
    }
}
