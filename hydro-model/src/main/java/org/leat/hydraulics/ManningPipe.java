package org.leat.hydraulics;

import java.util.function.DoubleUnaryOperator;
import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * A round pipe running part-full by its own slope: {@code Q = A R^(2/3) √S / n} (Manning), A wetted area m², R hydraulic
 * radius m, S slope as fall over length, n Manning's roughness s/m^(1/3) (0.009 smooth plastic). And the critical depth,
 * where {@code Q² B = g A³}, B width of the surface m. Chow, Open-Channel Hydraulics, 2-6, 4-4 and 6-5. n is meant for
 * fully rough flow: in pipes below 0.1 m it is a guide.
 */
public final class ManningPipe {

    /** Depth over bore of greatest flow; above it flow falls, as the crown adds wall but little area. */
    private static final double FULLEST = 0.93818;

    private ManningPipe() {}

    /** {@return the greatest flow that runs down by slope without filling the pipe, m³/s} */
    public static double capacity(double bore, double manning, double slope) {
        return flow(FULLEST, bore, manning, slope);
    }

    /**
     * {@return depth over bore at which a flow runs evenly (the lower of two), 1; outside where it is more than {@link
     * #capacity}: the pipe fills}
     */
    public static Answer normalDepthRatio(double flow, double bore, double manning, double slope) {
        double most = capacity(bore, manning, slope);
        if (Physical.notNegative("flow", flow) > most) {
            return Answer.outside("Manning, part-full pipe", "flow", flow, 0, most, "m³/s");
        }
        return Answer.of(bisect(ratio -> flow(ratio, bore, manning, slope) - flow, 0, FULLEST));
    }

    /** {@return critical depth over bore, 1} Deeper flow is slow, shallower is fast. */
    public static double criticalDepthRatio(double flow, double bore) {
        Physical.positive("flow", flow);
        double least = flow * flow / Gravity.STANDARD;
        return bisect(
                ratio -> {
                    double area = area(ratio, bore);
                    return area * area * area / width(ratio, bore) - least;
                },
                0,
                1);
    }

    private static double flow(double ratio, double bore, double manning, double slope) {
        double angle = angle(ratio);
        double area = area(ratio, Physical.positive("bore", bore));
        if (area == 0) {
            return 0;
        }
        double radius = area / (angle * bore / 2);
        return area
                * Math.cbrt(radius * radius)
                * Math.sqrt(Physical.notNegative("slope", slope))
                / Physical.positive("manning", manning);
    }

    /** Angle at the axis over which the wall is wet, rad. */
    private static double angle(double ratio) {
        return 2 * Math.acos(1 - 2 * ratio);
    }

    private static double area(double ratio, double bore) {
        double angle = angle(ratio);
        return bore * bore / 8 * (angle - Math.sin(angle));
    }

    private static double width(double ratio, double bore) {
        return 2 * bore * Math.sqrt(ratio * (1 - ratio));
    }

    /** Root of a rising function. */
    private static double bisect(DoubleUnaryOperator rising, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
