package org.leat.readings;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;

/**
 * How well readings suit a plant whose numbers are known but for the tolerances of building: readings r off by what the instruments
 * (standard u, one by one) and the tolerances (S, common to all) leave open, ln L = −½ (χ² + ln |C|) with C = diag u² + S Sᵀ. Solved in
 * the tolerances' space (Woodbury): P = (1 + Sᵀ C₀⁻¹ S)⁻¹, b = P Sᵀ C₀⁻¹ r, χ² = rᵀ C₀⁻¹ r − bᵀ Sᵀ C₀⁻¹ r. The readings' own ln u
 * counts for nothing between faults and is left out.
 */
final class Evidence {

    private final List<Observation> readings;
    private final double[] standard;
    private final double[][] moved;
    private final double[][] spread;
    private final double logDeterminant;

    /**
     * @param readings what was read
     * @param model uncertainty of the model for each reading, standard
     * @param moved by reading and tolerance: what one standard uncertainty of it moves
     */
    Evidence(List<Observation> readings, double[] model, double[][] moved) {
        this.readings = readings;
        int n = readings.size();
        int tolerances = n == 0 ? 0 : moved[0].length;
        this.standard = new double[n];
        this.moved = new double[n][tolerances];
        double own = 0;
        for (int i = 0; i < n; i++) {
            standard[i] = Math.hypot(readings.get(i).standard(), model[i]);
            own += 2 * Math.log(standard[i] / readings.get(i).standard());
            for (int b = 0; b < tolerances; b++) {
                this.moved[i][b] = moved[i][b] / standard[i];
            }
        }
        double[][] inner = new double[tolerances][tolerances];
        for (int a = 0; a < tolerances; a++) {
            for (int b = 0; b <= a; b++) {
                double sum = a == b ? 1 : 0;
                for (int i = 0; i < n; i++) {
                    sum += this.moved[i][a] * this.moved[i][b];
                }
                inner[a][b] = sum;
                inner[b][a] = sum;
            }
        }
        if (tolerances == 0) {
            this.spread = new double[0][0];
            this.logDeterminant = 0;
        } else {
            CholeskyDecomposition cholesky = new CholeskyDecomposition(new Array2DRowRealMatrix(inner, false));
            double log = own;
            for (int a = 0; a < tolerances; a++) {
                log += 2 * Math.log(cholesky.getL().getEntry(a, a));
            }
            this.logDeterminant = log;
            this.spread = cholesky.getSolver().getInverse().getData();
        }
    }

    /**
     * What the readings say.
     *
     * @param logLikelihood but for what is the same for every fault
     * @param squares χ²
     * @param tolerances how far each is off, in its standard uncertainty
     */
    @SuppressWarnings("ArrayRecordComponent") // numbers that are only read
    record Said(double logLikelihood, double squares, double[] tolerances) {}

    /** {@return what the readings say of a plant that would let one read these values} */
    Said of(double[] expected) {
        int tolerances = spread.length;
        double squares = 0;
        double[] push = new double[tolerances];
        for (int i = 0; i < standard.length; i++) {
            double residual = (readings.get(i).value() - expected[i]) / standard[i];
            squares += residual * residual;
            for (int b = 0; b < tolerances; b++) {
                push[b] += moved[i][b] * residual;
            }
        }
        double[] off = new double[tolerances];
        for (int a = 0; a < tolerances; a++) {
            for (int b = 0; b < tolerances; b++) {
                off[a] += spread[a][b] * push[b];
            }
            squares -= off[a] * push[a];
        }
        return new Said(-0.5 * (squares + logDeterminant), squares, off);
    }

    /** {@return variance that the tolerances, as far as the readings know them, leave a further reading} */
    double left(double[] movedThere) {
        double sum = 0;
        for (int a = 0; a < spread.length; a++) {
            for (int b = 0; b < spread.length; b++) {
                sum += movedThere[a] * spread[a][b] * movedThere[b];
            }
        }
        return sum;
    }
}
