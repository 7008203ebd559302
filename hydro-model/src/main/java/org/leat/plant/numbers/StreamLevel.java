package org.leat.plant.numbers;

import org.apiguardian.api.API;

/**
 * One flow the stream has in the year.
 *
 * @param kind how it was told
 * @param at share of the year in which it is reached or exceeded; for a month 1 to 12; for a single flow 1
 * @param flow of the stream, m³/s
 * @param flowPlusMinus its tolerance, m³/s; zero where none is known
 * @param available flow less what must stay in the stream, m³/s, never negative
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
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
