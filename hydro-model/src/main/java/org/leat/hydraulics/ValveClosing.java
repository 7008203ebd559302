package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Flow that a valve leaves while its travel goes on evenly: {@code q = 1/√(1 + (K − K1) m)}, K its loss coefficient now, K1 open, m
 * the head that one K takes at the full flow over all head there is. In a penstock that ends in nozzles m is some thousandths, so
 * that a gate valve shuts off most of the flow in the last tenth of its travel, a ball valve in a quarter of it. Source: losses in series; Wylie and Streeter, Fluid Transients in Systems, ch. 3, valve at the end of a line; the kinds say
 * where their K comes from.
 *
 * <p>The flow is that of water without inertia. The water's own hammer holds it up, so that it stops later still: in one pipe
 * with {@code a V0/(g H)} of 2 or less the rise of {@link Characteristics} stays below Joukowsky of {@link #greatestStop};
 * beyond, the characteristics count.
 */
public final class ValveClosing {

    private static final int STEPS = 160;
    private static final int WINDOWS = 40;

    private ValveClosing() {}

    /**
     * {@return share of the full flow}
     *
     * @param opening share of the valve's travel that is open, 0 to 1
     * @param headShare m, above 0: {@code V²/(2 g H)} in the valve's bore; of a needle the nozzle's head over H
     */
    public static double flowShare(ValveKind kind, double headShare, double opening) {
        Physical.positive("headShare", headShare);
        double loss = kind.lossCoefficient(opening) - kind.lossCoefficient(1);
        return 1 / Math.sqrt(1 + Math.max(0, loss) * headShare);
    }

    /**
     * {@return the head share of a valve before nozzles}
     *
     * @param flow steady through the valve, m³/s
     * @param bore of the valve, m
     * @param netHead before the nozzles, m
     * @param head all there is, m: the whole fall for a flow share, that before the nozzles for an opening
     */
    public static double headShare(ValveKind kind, double flow, double bore, double netHead, double head) {
        double velocity = flow / (Math.PI / 4 * bore * bore);
        return (kind == ValveKind.NEEDLE ? netHead : velocity * velocity / (2 * Gravity.STANDARD)) / head;
    }

    /**
     * {@return greatest share of the full flow that is stopped within a share of the closing time}
     *
     * @param window share of the closing time; 1 or more takes in the whole of it
     */
    public static double greatestStop(ValveKind kind, double headShare, double window) {
        Physical.notNegative("window", window);
        double idle = kind.idleTravel();
        if (window >= 1 - idle) {
            return 1;
        }
        double greatest = 0;
        for (int i = 0; i <= WINDOWS; i++) {
            double shut = idle + (1 - window - idle) * near(i, WINDOWS);
            greatest = Math.max(greatest, flowShare(kind, headShare, shut + window) - flowShare(kind, headShare, shut));
        }
        return Math.min(1, greatest);
    }

    /**
     * {@return effective closing time, s: that of a flow which falls evenly and as fast as this one does in its worst return time}
     * No more than the closing time; the return time or less where the flow can stop within it.
     *
     * @param closingTime of the whole travel, s
     * @param returnTime 2 L/a, s
     */
    public static double effectiveTime(ValveKind kind, double headShare, double closingTime, double returnTime) {
        Physical.positive("returnTime", returnTime);
        Physical.notNegative("closingTime", closingTime);
        return closingTime <= returnTime
                ? closingTime
                : Math.min(closingTime, returnTime / greatestStop(kind, headShare, returnTime / closingTime));
    }

    /**
     * {@return the open area of the nozzles that has the same effect, over that of all nozzles open}
     *
     * @param headShare m with H the head before the nozzles
     * @param left share of the nozzle area that stays open
     */
    public static NozzleOpening opening(ValveKind kind, double headShare, double closingTime, double left) {
        double idle = kind.idleTravel();
        double[] times = new double[STEPS + 1];
        double[] shares = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double open = idle + (1 - idle) * near(STEPS - i, STEPS);
            times[i] = closingTime * (1 - open);
            shares[i] = left + (1 - left) * flowShare(kind, headShare, open);
        }
        return NozzleOpening.table(times, shares);
    }

    /** Shares from 0 to 1, close together at 0, where the valve is nearly shut. */
    private static double near(int i, int of) {
        double share = (double) i / of;
        return share * share * share;
    }
}
