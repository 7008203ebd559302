package org.leat.hydraulics;

/**
 * Flow that is reached or exceeded in a share of the time, of daily flows: rank m of n, the largest first, is exceeded in m/(n + 1) of
 * the time (Weibull's position); straight between ranks, constant beyond the first and the last. Flows in m³/s; share from 0 to 1,
 * at least one flow; anything else is a mistake of the caller and throws.
 *
 * <p>Source: Weibull's plotting position, as in hydrology handbooks; other positions (Hazen, m/n) differ by some per cent at the dry
 * end of a single year.
 */
public final class FlowDurationCurve {

    private FlowDurationCurve() {}

    /**
     * {@return the flow, m³/s}
     *
     * @param falling flows, the largest first, m³/s
     * @param share of the time
     */
    public static double exceeded(double[] falling, double share) {
        if (falling.length == 0 || !(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(
                    "a share of the time is from 0 to 1, of one flow or more: " + share + " of " + falling.length);
        }
        double rank = share * (falling.length + 1) - 1;
        if (rank <= 0) {
            return falling[0];
        }
        int below = (int) Math.floor(rank);
        return below >= falling.length - 1
                ? falling[falling.length - 1]
                : falling[below] + (rank - below) * (falling[below + 1] - falling[below]);
    }
}
