package org.leat.electrics;

import java.util.function.DoubleUnaryOperator;

/**
 * Root of a function between two points where its sign differs: interpolation with a safeguard (the Illinois form of the
 * false position with a bisection when it stalls), no allocation.
 *
 * <p>Source: Dowell and Jarratt, A modified regula falsi method, BIT 11 (1971) 168–174 (from memory).
 */
final class Roots {

    private Roots() {}

    /** {@return the root, within the tolerance in the argument} */
    static double between(
            DoubleUnaryOperator f, double low, double atLow, double high, double atHigh, double tolerance) {
        double a = low;
        double fa = atLow;
        double b = high;
        double fb = atHigh;
        for (int n = 0; n < 100; n++) {
            double c = n % 8 == 7 ? 0.5 * (a + b) : b - fb * (b - a) / (fb - fa);
            double fc = f.applyAsDouble(c);
            if (fc == 0) {
                return c;
            }
            if (fc * fb < 0) {
                a = b;
                fa = fb;
            } else {
                fa *= 0.5;
            }
            double step = Math.abs(c - b);
            b = c;
            fb = fc;
            if (step < tolerance || Math.abs(b - a) < tolerance) {
                return b;
            }
        }
        return b;
    }
}
