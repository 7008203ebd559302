package org.leat.electrics;

import java.util.function.DoubleUnaryOperator;

/**
 * Root of a function between two points where its sign differs: interpolation with a safeguard (the Illinois form of the
 * false position with a bisection when it stalls), no allocation.
 *
 * <p>Source: Dowell and Jarratt, A modified regula falsi method, BIT 11 (1971) 168–174 (from memory).
 */
final class IllinoisMethod {

    private IllinoisMethod() {}

    /** {@return the root, within the tolerance in the argument} */
    static double between(
            DoubleUnaryOperator f, double low, double atLow, double high, double atHigh, double tolerance) {
        double a = low;
        double fa = atLow;
        double b = high;
        double fb = atHigh;
        for (int n = 0; n < 200 && fb != 0 && Math.abs(b - a) > 2 * tolerance; n++) {
            double c = n % 5 == 4 ? 0.5 * (a + b) : b - fb * (b - a) / (fb - fa);
            if (Math.abs(c - b) < tolerance) {
                c = b + Math.copySign(tolerance, a - b);
            }
            double fc = f.applyAsDouble(c);
            if (fc * fb < 0) {
                a = b;
                fa = fb;
            } else {
                fa *= 0.5;
            }
            b = c;
            fb = fc;
        }
        return b;
    }
}
