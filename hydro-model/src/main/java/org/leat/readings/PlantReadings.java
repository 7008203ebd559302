package org.leat.readings;

import java.time.LocalDate;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.design.Limits;
import org.leat.quantity.Measured;

/** What was read on a running plant on one day. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@About("What was read on a running plant on one day")
public record PlantReadings(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("of the plant or the day") @CanBeAbsent @Nullable
        String name,

        @About("of the readings") @CanBeAbsent @Nullable LocalDate day,

        @About("how well the instruments show") @CanBeAbsent @Nullable
        Instruments instruments,

        @About("height of the pressure gauge above the nozzle axis") @CanBeAbsent @Nullable
        Quantity<Length> gaugeAboveNozzle,

        @About("gauge by the nozzles, all of them shut, the pipe full") @CanBeAbsent @Nullable
        Measured<Pressure> standingPressure,

        @About("what was read with each nozzle set open") @Limits(mostItems = 2000)
        List<SetReadings> sets) {

    public PlantReadings {
        sets = List.copyOf(sets);
        Demand.limits(PlantReadings.class, format, name, day, instruments, gaugeAboveNozzle, standingPressure, sets)
                .that(
                        standingPressure != null || !sets.isEmpty(),
                        "sets",
                        "no readings",
                        "readings of a nozzle set, or the standing pressure")
                .that(
                        sets.stream().allMatch(set -> set.day() == null),
                        "sets",
                        "a day of its own",
                        "readings of one day; those of many days are a log")
                .hold();
    }
}
