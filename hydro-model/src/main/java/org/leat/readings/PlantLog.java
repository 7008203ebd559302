package org.leat.readings;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.design.Limits;

/** What was read on a running plant over months. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@About("What was read on a running plant over months")
public record PlantLog(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("of the plant") @CanBeAbsent @Nullable String name,

        @About("each line, in any order, with its day") @Limits(items = 1, mostItems = 20_000)
        List<SetReadings> entries) {

    public PlantLog {
        entries = List.copyOf(entries);
        int dayless = 0;
        while (dayless < entries.size() && entries.get(dayless).day() != null) {
            dayless++;
        }
        Demand.limits(PlantLog.class, format, name, entries)
                .that(dayless == entries.size(), "entries", "none in entry " + (dayless + 1), "a day in each")
                .hold();
    }
}
