package org.leat.readings;

import java.time.LocalDate;
import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * One fault of a plant over time, told as a change since the first day of the log.
 *
 * @param kind of fault
 * @param days each with the size that suits it best
 * @param since the day from which the trend is taken: the first, or when it last fell back
 * @param perDay change of the size in a day, since then
 * @param perDayStandard its standard uncertainty
 * @param now size on the last day, by the trend
 * @param nowStandard its standard uncertainty
 * @param limit size at which it must be looked after, common practice
 * @param met day on which the trend meets its limit; null where it does not within ten years
 * @param earliest day on which it may, 95 %; null where it does not within ten years
 * @param squares sum of squared residuals of all days with this fault alone, in standard uncertainties
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Drift(
        FaultKind kind,
        List<Day> days,
        LocalDate since,
        double perDay,
        double perDayStandard,
        double now,
        double nowStandard,
        double limit,
        @Nullable LocalDate met,
        @Nullable LocalDate earliest,
        double squares) {

    public Drift {
        days = List.copyOf(days);
    }

    /**
     * One day.
     *
     * @param day of the readings
     * @param size that suits best
     * @param standard uncertainty of it
     */
    public record Day(LocalDate day, double size, double standard) {}

    /** {@return whether it grows, by more than two standard uncertainties} */
    public boolean grows() {
        return perDay > 2 * perDayStandard;
    }
}
