package org.leat.season;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * What a file of daily flows came to.
 *
 * @param series the flows; null where something is wrong
 * @param faults what is wrong, in the order of the file; empty where there is a series
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record SeriesReading(@Nullable FlowSeries series, List<SeriesFault> faults) {
    public SeriesReading {
        faults = List.copyOf(faults);
    }

    /**
     * One thing wrong with a series of flows.
     *
     * @param line in the file, from 1 on
     * @param what is wrong, with what was found and what to write
     */
    public record SeriesFault(int line, String what) {}
}
