package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Flow from depths and velocities on verticals: {@code Q = Σ v_i d_i (x_(i+1) - x_(i-1))/2}, v mean velocity m/s and d depth m
 * on the vertical at x m from a bank; the first and last vertical count half their side. ISO 748:2007, 8.2, mid-section
 * method. On four verticals the mean-section method ({@link MeanSection}) may lie
 * 11 % away.
 */
public final class MidSection {

    private MidSection() {}

    /**
     * {@return flow, m³/s}
     *
     * @param distances from a bank, m, rising
     * @param depths one for each, m
     * @param velocities mean on each vertical, m/s; negative where water runs back
     */
    public static double flow(double[] distances, double[] depths, double[] velocities) {
        int n = verticals(distances, depths, velocities);
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double left = i > 0 ? Physical.positive("step", distances[i] - distances[i - 1]) : 0;
            double right = i < n - 1 ? distances[i + 1] - distances[i] : 0;
            sum += Physical.finite("velocity", velocities[i])
                    * Physical.notNegative("depth", depths[i])
                    * (left + right)
                    / 2;
        }
        return sum;
    }

    /** {@return on how many verticals it was gauged} At least two, with a depth and a velocity on each. */
    static int verticals(double[] distances, double[] depths, double[] velocities) {
        int n = distances.length;
        if (n < 2 || depths.length != n || velocities.length != n) {
            throw new IllegalArgumentException(n + " distances, " + depths.length + " depths, " + velocities.length
                    + " velocities: at least two of each");
        }
        return n;
    }

    /**
     * {@return relative uncertainty of the flow at 95 %, 1: {@code √(um² + (uv² + ud²)/m)}} ISO 748:2007, E.4.
     *
     * @param verticals m, how many carry flow
     * @param fewVerticals um, for the number of verticals; table E.6 gives 0.15 for 5, 0.09 for 10, 0.06 for 15 (from memory)
     * @param velocity uv of one vertical
     * @param depth ud of one vertical
     */
    public static double relativeUncertainty(int verticals, double fewVerticals, double velocity, double depth) {
        Physical.positive("verticals", verticals);
        double each = Uncertainty.rootSumSquare(velocity, depth) / Math.sqrt(verticals);
        return Uncertainty.rootSumSquare(fewVerticals, each);
    }
}
