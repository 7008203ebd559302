package org.leat.plant.solve;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Root of a continuous function whose sign differs at two points, by Brent's method, to the last digits that count. */
final class Root {

    private static final double TOLERANCE = 1e-11;
    private static final int MOST_EVALUATIONS = 400;

    private Root() {}

    /**
     * {@return where the function is nil}
     *
     * @param low less than {@code high}
     * @param atLow value at the low end, of the other sign than {@code atHigh}, or nil
     */
    static double between(DoubleUnaryOperator f, double low, double atLow, double high, double atHigh) {
        if (atLow == 0 || atHigh == 0 || !(low < high)) {
            return atLow == 0 ? low : high;
        }
        // what the ends give is known, and may be known better than the function computes it
        UnivariateFunction known = x -> x == low ? atLow : x == high ? atHigh : f.applyAsDouble(x);
        return new BrentSolver(TOLERANCE, TOLERANCE * high).solve(MOST_EVALUATIONS, known, low, high);
    }
}
