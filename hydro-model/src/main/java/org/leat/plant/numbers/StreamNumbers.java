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

    /**
     * One flow the stream has in the year.
     *
     * @param kind how it was told
     * @param at share of the year in which it is reached or exceeded; for a month 1 to 12; for a single flow 1
     * @param flow of the stream, m³/s
     * @param flowPlusMinus its tolerance, m³/s; zero where none is known
     * @param available flow less what must stay in the stream, m³/s, never negative
     */
    public record StreamLevel(Kind kind, double at, double flow, double flowPlusMinus, double available) {

        /** How a stream flow was told. */
        public enum Kind {
            /** one flow for the whole year, stated or gauged. */
            CONSTANT,
            /** a point of the duration curve. */
            EXCEEDED,
            /** the mean of a month. */
            MONTH
        }
    }
}
