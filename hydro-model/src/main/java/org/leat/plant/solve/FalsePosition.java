package org.leat.plant.solve;

import java.util.function.DoubleUnaryOperator;

/**
 * Root of a continuous function whose sign differs at two points: false position, the kept end halved. For searches that stop
 * early because each step is dear (a bridge stepped in time) or another search runs around them (the tracker, the warm winding):
 * there the last digits are the method's, and the numbers found are those of this one. Else see {@link Root}.
 */
public final class FalsePosition {

    private static final int MAX_STEPS = 200;

    private FalsePosition() {}

    /**
     * {@return where the function is nil, to a share {@code tolerance} of the greater end}
     *
     * @param atLow value at the low end, of the other sign than {@code atHigh} or nil
     */
    public static double between(
            DoubleUnaryOperator f, double low, double atLow, double high, double atHigh, double tolerance) {
        if (atLow == 0) {
            return low;
        }
        if (atHigh == 0) {
            return high;
        }
        double a = low;
        double fa = atLow;
        double b = high;
        double fb = atHigh;
        double enough = tolerance * Math.max(Math.abs(low), Math.abs(high));
        for (int n = 0; n < MAX_STEPS && Math.abs(b - a) > enough; n++) {
            double c = (a * fb - b * fa) / (fb - fa);
            if (n % 6 == 5 || !(c > Math.min(a, b) && c < Math.max(a, b))) {
                c = 0.5 * (a + b);
            }
            double fc = f.applyAsDouble(c);
            if (fc == 0 || Math.abs(c - b) < 0.5 * enough) {
                return c;
            }
            if (fc > 0 == fb > 0) {
                fa *= 0.5;
            } else {
                a = b;
                fa = fb;
            }
            b = c;
            fb = fc;
        }
        return b;
    }
}
