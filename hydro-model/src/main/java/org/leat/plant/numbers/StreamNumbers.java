package org.leat.plant.numbers;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * Stream, in SI.
 *
 * @param levels its flows, most water first; empty where the design does not state them or cannot be read
 * @param kept residual flow, m³/s; zero where none is stated
 * @param fullPipeShare share of the year in which the pipe must stay full
 * @param unknown why readings of the stream give no flow; null where they do or there are none
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record StreamNumbers(
        List<StreamLevel> levels, double kept, double fullPipeShare, Amount.@Nullable Unknown unknown)
        implements StreamNumbersBuilder.With {
    public StreamNumbers {
        levels = List.copyOf(levels);
    }
}
