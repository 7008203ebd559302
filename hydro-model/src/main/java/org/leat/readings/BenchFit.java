package org.leat.readings;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;
import org.jspecify.annotations.Nullable;
import org.leat.readings.MotorBench.Fault;

/**
 * The motor with one fault that suits readings best, by weighted least squares, what is known beforehand of meters and sizes among the
 * squares; its evidence by Laplace's approximation, ln Z = −χ²/2 + ln |C|/2, parameters told in what is known of them beforehand.
 *
 * @param fault of the motor
 * @param variant of it
 * @param pairs of poles
 * @param at its parameters
 * @param covariance of them
 * @param squares sum of them, those of what is known beforehand among them
 * @param evidence its logarithm
 */
@SuppressWarnings("ArrayRecordComponent") // numbers that are only read
record BenchFit(
        Fault fault, int variant, double pairs, double[] at, RealMatrix covariance, double squares, double evidence) {

    private static final double STEP = 1e-5;
    private static final double EXACT = 1e-9;

    /**
     * What is known of a parameter beforehand.
     *
     * @param mean of it
     * @param standard uncertainty, one sigma
     */
    record Known(double mean, double standard) {}

    /** What is to be fitted. */
    record Task(List<BenchTerm> terms, List<Known> known, double highest) {

        FaultyMotor motor(double[] at, Fault fault, int variant, double pairs) {
            return new FaultyMotor(at, fault, variant, pairs, highest);
        }

        /** What is stated of another motor tells little. */
        double standard(BenchTerm term, Fault fault) {
            boolean loose = term.stated() && fault == Fault.ANOTHER_MOTOR;
            boolean drags = term.kind() == MotorBench.Kind.DRAG && fault == Fault.SHORTED_TURNS;
            return loose || drags ? Math.hypot(term.standard(), 0.7 * Math.abs(term.value())) : term.standard();
        }

        /** Parameters from how many standard uncertainties each is off what is known of it. */
        private double[] unscaled(double[] off) {
            double[] at = new double[off.length];
            for (int k = 0; k < at.length; k++) {
                at[k] = known.get(k).mean() + known.get(k).standard() * off[k];
            }
            return at;
        }

        private double[] values(double[] off, Fault fault, int variant, double pairs) {
            FaultyMotor motor = motor(unscaled(off), fault, variant, pairs);
            double[] values = new double[terms.size() + off.length];
            for (int i = 0; i < terms.size(); i++) {
                BenchTerm term = terms.get(i);
                values[i] = term.shown().applyAsDouble(motor) / standard(term, fault);
            }
            System.arraycopy(off, 0, values, terms.size(), off.length);
            return values;
        }

        private double[] read(Fault fault, @Nullable FaultyMotor in) {
            double[] read = new double[terms.size() + known.size()];
            for (int i = 0; i < terms.size(); i++) {
                BenchTerm term = terms.get(i);
                read[i] = (in == null ? term.value() : term.shown().applyAsDouble(in)) / standard(term, fault);
            }
            return read;
        }

        /**
         * {@return the fit of one fault; null where none comes}
         *
         * @param typical median of its size
         */
        @Nullable
        BenchFit fit(Fault fault, int variant, double pairs, double typical) {
            return fit(fault, variant, pairs, typical, null);
        }

        /** {@return the fit to what another motor would show, in place of what was read} */
        @Nullable
        BenchFit fit(Fault fault, int variant, double pairs, double typical, @Nullable FaultyMotor in) {
            double[] read = read(fault, in);
            BenchFit best = null;
            for (double times : typical > 0 ? new double[] {1, 6} : new double[] {1}) {
                if (best != null && best.squares() < terms.size()) {
                    break;
                }
                double[] start = new double[known.size()];
                start[FaultyMotor.SIZE] = Math.log(times);
                double begun = squares(start, read, fault, variant, pairs);
                if (begun < EXACT) {
                    // a start that is the end already has no way to go
                    return of(fault, variant, pairs, start, begun);
                }
                LeastSquaresFit.Result result =
                        LeastSquaresFit.of(at -> values(at, fault, variant, pairs), read, start);
                if (result instanceof LeastSquaresFit.Fitted fitted
                        && (best == null || fitted.sum() < best.squares())) {
                    BenchFit fit = of(fault, variant, pairs, fitted.parameters(), fitted.sum());
                    best = fit == null ? best : fit;
                }
            }
            return best;
        }

        private double squares(double[] off, double[] read, Fault fault, int variant, double pairs) {
            double[] values = values(off, fault, variant, pairs);
            double sum = 0;
            for (int i = 0; i < values.length; i++) {
                sum += (values[i] - read[i]) * (values[i] - read[i]);
            }
            return sum;
        }

        private @Nullable BenchFit of(Fault fault, int variant, double pairs, double[] off, double squares) {
            int all = known.size();
            double[][] slopes = new double[terms.size() + all][all];
            for (int p = 0; p < all; p++) {
                double[] up = off.clone();
                double[] down = off.clone();
                up[p] += STEP;
                down[p] -= STEP;
                double[] above = values(up, fault, variant, pairs);
                double[] below = values(down, fault, variant, pairs);
                for (int i = 0; i < slopes.length; i++) {
                    slopes[i][p] = (above[i] - below[i]) / (2 * STEP);
                }
            }
            RealMatrix jacobian = new Array2DRowRealMatrix(slopes, false);
            try {
                CholeskyDecomposition normal =
                        new CholeskyDecomposition(jacobian.transpose().multiply(jacobian), 1e-6, 0);
                double evidence = -squares / 2 - Math.log(normal.getDeterminant()) / 2;
                for (BenchTerm term : terms) {
                    evidence -= Math.log(standard(term, fault) / term.standard());
                }
                return new BenchFit(
                        fault,
                        variant,
                        pairs,
                        unscaled(off),
                        scaled(normal.getSolver().getInverse()),
                        squares,
                        evidence);
            } catch (NonPositiveDefiniteMatrixException e) {
                return null;
            }
        }

        private RealMatrix scaled(RealMatrix covariance) {
            RealMatrix scaled = covariance.copy();
            for (int r = 0; r < known.size(); r++) {
                for (int c = 0; c < known.size(); c++) {
                    scaled.multiplyEntry(
                            r, c, known.get(r).standard() * known.get(c).standard());
                }
            }
            return scaled;
        }
    }

    /** {@return standard uncertainty of a parameter} */
    double standard(int parameter) {
        return Math.sqrt(covariance.getEntry(parameter, parameter));
    }
}
