package org.leat.season;

import java.time.YearMonth;
import org.apiguardian.api.API;

/**
 * Energy of one month at the battery's poles, J. Made and what comes out of the battery cover what is used, stored, dumped.
 *
 * @param month which
 * @param days of it in the series
 * @param made by the turbine
 * @param used by the loads
 * @param dumped or held back, the battery being full or taking no more
 * @param missing what the loads would have taken
 * @param hoursMissing hours in which something was missing
 * @param leastCharge lowest share of the bank
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Month(
        YearMonth month,
        int days,
        double made,
        double used,
        double dumped,
        double missing,
        int hoursMissing,
        double leastCharge) {}
