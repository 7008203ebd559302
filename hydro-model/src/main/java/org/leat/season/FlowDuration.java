package org.leat.season;

import java.util.Arrays;
import org.apiguardian.api.API;
import org.leat.hydraulics.FlowDurationCurve;

/**
 * Flow-duration curve of a series of daily flows: rank m of n, the largest first, is exceeded in m/(n + 1) of the time (Weibull's
 * position); straight between ranks, constant beyond the first and the last. Needs at least one flow; flows are m³/s and not
 * negative.
 *
 * <p>Source: Weibull's plotting position, as in hydrology handbooks; other positions (Hazen, m/n) differ by some per cent at the dry
 * end of a single year.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class FlowDuration {

    private final double[] falling;

    private FlowDuration(double[] falling) {
        this.falling = falling;
    }

    /** {@return the curve of these flows, m³/s} */
    public static FlowDuration of(double[] flows) {
        if (flows.length == 0) {
            throw new IllegalArgumentException("a curve needs a flow");
        }
        double[] sorted = flows.clone();
        Arrays.sort(sorted);
        for (int i = 0, j = sorted.length - 1; i < j; i++, j--) {
            double swap = sorted[i];
            sorted[i] = sorted[j];
            sorted[j] = swap;
        }
        return new FlowDuration(sorted);
    }

    /** {@return the flow that is reached or exceeded in a share of the time, m³/s; share from 0 to 1} */
    public double exceeded(double share) {
        return FlowDurationCurve.exceeded(falling, share);
    }

    /** {@return the mean flow, m³/s} */
    public double mean() {
        return Arrays.stream(falling).sum() / falling.length;
    }
}
