package org.leat.readings;

import java.util.Arrays;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Parameters of a law by least squares, damped after Levenberg and Marquardt. Slopes are taken by central differences. A fit that
 * comes to no end, or to a sum that is not finite, is told as {@link NotFitted}, never as a result.
 *
 * <p>Source: K. Levenberg, Quart. Appl. Math. 2 (1944) 164; D. W. Marquardt, J. SIAM 11 (1963) 431; as in Commons Math. Checked by the
 * certified nonlinear sets of the Statistical Reference Datasets of NIST.
 */
final class LeastSquaresFit {

    private static final int MOST_STEPS = 4000;
    private static final double TOLERANCE = 1e-13;
    private static final double RANK = 1e-14;

    /** How far the first step may go, over the start: the usual, and shorter ones where that runs to where nothing slopes any more. */
    private static final double[] FIRST_STEPS = {100, 1, 0.1};

    private LeastSquaresFit() {}

    /** What is fitted. */
    @FunctionalInterface
    interface Law {
        /** {@return the law's values, one for each reading, by its parameters} */
        double[] at(double[] parameters);
    }

    /** What came of it. */
    sealed interface Result permits Fitted, NotFitted {}

    /**
     * A least sum of squares.
     *
     * @param parameters that make it
     * @param sum of the squares
     * @param standard uncertainty of each parameter, the readings' variance taken from the sum; not a number where nothing is left over
     * @param weighted standard uncertainty of each parameter where every residual has the variance one
     */
    @SuppressWarnings("ArrayRecordComponent") // numbers that are only read
    record Fitted(double[] parameters, double sum, double[] standard, double[] weighted) implements Result {}

    /**
     * No fit.
     *
     * @param reason in a few words
     */
    record NotFitted(String reason) implements Result {}

    /**
     * {@return the fit}
     *
     * @param law its values and those read have the same weight
     * @param read values
     * @param start of the parameters; none may be far from what it will be in scale
     */
    static Result of(Law law, double[] read, double[] start) {
        double[] scale = new double[start.length];
        for (int i = 0; i < scale.length; i++) {
            scale[i] = start[i] == 0 ? 1 : Math.abs(start[i]);
        }
        MultivariateJacobianFunction model = point -> {
            double[] at = times(point.toArray(), scale);
            double[] values = law.at(at);
            return new Pair<RealVector, RealMatrix>(
                    new ArrayRealVector(values, false),
                    new Array2DRowRealMatrix(slopes(law, at, scale, values.length), false));
        };
        Result result = new NotFitted("it comes to no end");
        for (double bound : FIRST_STEPS) {
            result = within(bound, model, read, start, scale);
            if (result instanceof Fitted) {
                return result;
            }
        }
        return result;
    }

    private static Result within(
            double bound, MultivariateJacobianFunction model, double[] read, double[] start, double[] scale) {
        try {
            Optimum optimum = new LevenbergMarquardtOptimizer()
                    .withInitialStepBoundFactor(bound)
                    .withCostRelativeTolerance(TOLERANCE)
                    .withParameterRelativeTolerance(TOLERANCE)
                    .withOrthoTolerance(TOLERANCE)
                    .optimize(new LeastSquaresBuilder()
                            .start(over(start, scale))
                            .target(read)
                            .model(model)
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build());
            return fitted(optimum, scale, read.length);
        } catch (MathIllegalStateException | MathIllegalArgumentException e) {
            return new NotFitted("it comes to no end");
        }
    }

    private static Result fitted(Optimum optimum, double[] scale, int readings) {
        double sum = optimum.getCost() * optimum.getCost();
        double[] parameters = times(optimum.getPoint().toArray(), scale);
        if (!Double.isFinite(sum) || !Arrays.stream(parameters).allMatch(Double::isFinite)) {
            return new NotFitted("the sum of squares is not finite");
        }
        double[] weighted = times(optimum.getSigma(RANK).toArray(), scale);
        int free = readings - parameters.length;
        double[] standard = new double[parameters.length];
        for (int i = 0; i < standard.length; i++) {
            standard[i] = free > 0 ? weighted[i] * Math.sqrt(sum / free) : Double.NaN;
        }
        return new Fitted(parameters, sum, standard, weighted);
    }

    private static double[][] slopes(Law law, double[] at, double[] scale, int values) {
        double[][] slopes = new double[values][at.length];
        for (int p = 0; p < at.length; p++) {
            double step = Math.cbrt(Math.ulp(1.0)) * Math.max(Math.abs(at[p]), 1e-6 * scale[p]);
            double[] up = at.clone();
            double[] down = at.clone();
            up[p] += step;
            down[p] -= step;
            double[] above = law.at(up);
            double[] below = law.at(down);
            for (int i = 0; i < values; i++) {
                slopes[i][p] = (above[i] - below[i]) / (up[p] - down[p]) * scale[p];
            }
        }
        return slopes;
    }

    private static double[] times(double[] values, double[] scale) {
        double[] product = new double[values.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = values[i] * scale[i];
        }
        return product;
    }

    private static double[] over(double[] values, double[] scale) {
        double[] quotient = new double[values.length];
        for (int i = 0; i < quotient.length; i++) {
            quotient[i] = values[i] / scale[i];
        }
        return quotient;
    }
}
