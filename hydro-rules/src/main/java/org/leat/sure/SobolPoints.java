package org.leat.sure;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points that fill a unit cube evenly: the first of Sobol's sequence, each moved to the middle of its stratum, so that along every
 * axis alone each of the {@code count} equal strata holds one point. The same at every call. Up to 1 000 dimensions; count a power
 * of two, for which the sequence is balanced.
 *
 * <p>Source: direction numbers of Joe and Kuo (2008), as in Apache Commons Math.
 */
final class SobolPoints {

    /** Dimensions that there are direction numbers for. */
    static final int MOST_DIMENSIONS = 1000;

    private SobolPoints() {}

    /** {@return points, coordinates above 0 and below 1} */
    static List<double[]> of(int dimensions, int count) {
        if (dimensions < 1 || dimensions > MOST_DIMENSIONS || count < 1 || Integer.bitCount(count) != 1) {
            throw new IllegalArgumentException(count + " points in " + dimensions + " dimensions");
        }
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        double middle = 0.5 / count;
        List<double[]> points = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            double[] point = sequence.nextVector();
            for (int d = 0; d < dimensions; d++) {
                point[d] += middle;
            }
            points.add(point);
        }
        return points;
    }
}
