package org.leat.hydraulics;

import java.util.ArrayList;
import java.util.List;
import org.leat.law.Physical;

/**
 * Rise of head above the tank level when a flow is stopped at once at the lower end of sections in series: the last section's own
 * {@code a ΔV/g}, and what of it each joint lets through on the wave's first way up. Exact without friction until the first
 * reflection is back; then joints and tank throw waves to and fro, and in random lines of two to four sections the highest head came
 * to as much as two and a half times the greatest rise of any section: no bound, {@link Characteristics} must be asked. Pieces
 * too short to matter are left out by {@link SurgeLine#withoutPieces}.
 *
 * <p>Source: Wylie and Streeter, Fluid Transients in Systems, ch. 3.
 */
public final class SeriesStop {

    private SeriesStop() {}

    /**
     * {@return rise in each section, from the tank down, as the wave first passes, m}
     *
     * @param flowStopped m³/s, at once
     * @param leastReturnTime s; a piece whose wave returns sooner is taken with its neighbour and has the rise of the one it goes with,
     *     see {@link SurgeLine#withoutPieces}
     */
    public static List<Double> firstPass(SurgeLine line, double flowStopped, double leastReturnTime) {
        Physical.notNegative("flowStopped", flowStopped);
        ShortPieces pieces =
                new ShortPieces(line.sections(), Physical.notNegative("leastReturnTime", leastReturnTime) / 2);
        double[] lasting = firstPass(pieces.lasting, flowStopped);
        List<Double> rises = new ArrayList<>();
        for (int host : pieces.host) {
            rises.add(lasting[host]);
        }
        return List.copyOf(rises);
    }

    private static double[] firstPass(List<SurgeSection> sections, double flowStopped) {
        double[] rises = new double[sections.size()];
        int last = rises.length - 1;
        double rise = impedance(sections.get(last)) * flowStopped;
        rises[last] = rise;
        for (int i = last - 1; i >= 0; i--) {
            rise *= JointTransmission.transmitted(impedance(sections.get(i + 1)), impedance(sections.get(i)));
            rises[i] = rise;
        }
        return rises;
    }

    private static double impedance(SurgeSection s) {
        return JointTransmission.impedance(s.waveSpeed(), s.area());
    }
}
