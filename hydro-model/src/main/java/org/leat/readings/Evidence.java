package org.leat.readings;

import java.util.List;

/**
 * How well readings suit a plant whose numbers are known but for the tolerances of building: readings r off by what the instruments
 * (standard u, one by one) and the tolerances (S, common to all) leave open, ln L = −½ (χ² + ln |C|) with C = diag u² + S Sᵀ. Solved in
 * the tolerances' space (Woodbury): A = 1 + Sᵀ C₀⁻¹ S = L Lᵀ, b = A⁻¹ Sᵀ C₀⁻¹ r, χ² = rᵀ C₀⁻¹ r − bᵀ Sᵀ C₀⁻¹ r. The readings' own ln u
 * counts for nothing between faults and is left out.
 */
final class Evidence {

    private final double[] read;
    private final double[] standard;
    private final double[][] moved;
    private final int tolerances;
    /** Lower triangle of A, after Cholesky. */
    private final double[][] lower;

    private final double logDeterminant;

    /**
     * @param readings what was read
     * @param model uncertainty of the model for each reading, standard
     * @param moved by reading and tolerance: what one standard uncertainty of it moves
     */
    Evidence(List<Observation> readings, double[] model, double[][] moved) {
        int n = readings.size();
        this.tolerances = n == 0 ? 0 : moved[0].length;
        this.read = new double[n];
        this.standard = new double[n];
        this.moved = new double[n][tolerances];
        double log = 0;
        for (int i = 0; i < n; i++) {
            Observation seen = readings.get(i);
            read[i] = seen.value();
            standard[i] = Math.hypot(seen.standard(), model[i]);
            log += 2 * Math.log(standard[i] / seen.standard());
            for (int b = 0; b < tolerances; b++) {
                this.moved[i][b] = moved[i][b] / standard[i];
            }
        }
        this.lower = new double[tolerances][];
        for (int a = 0; a < tolerances; a++) {
            double[] row = new double[a + 1];
            for (int b = 0; b <= a; b++) {
                double sum = a == b ? 1 : 0;
                for (int i = 0; i < n; i++) {
                    sum += this.moved[i][a] * this.moved[i][b];
                }
                double[] above = b == a ? row : lower[b];
                for (int k = 0; k < b; k++) {
                    sum -= row[k] * above[k];
                }
                // A is one and a sum of squares: what stands on its diagonal is one at least
                row[b] = a == b ? Math.sqrt(sum) : sum / above[b];
            }
            lower[a] = row;
            log += 2 * Math.log(row[a]);
        }
        this.logDeterminant = log;
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
        double[] residual = new double[read.length];
        for (int i = 0; i < read.length; i++) {
            residual[i] = read[i] - expected[i];
        }
        double[] off = new double[tolerances];
        double squares = squares(residual, off);
        return new Said(-0.5 * (squares + logDeterminant), squares, off);
    }

    /** {@return χ² of readings that are off by that much: the square of the distance in standard uncertainties of all together} */
    double squares(double[] residual) {
        return squares(residual, new double[tolerances]);
    }

    private double squares(double[] residual, double[] off) {
        double squares = 0;
        double[] push = new double[tolerances];
        for (int i = 0; i < residual.length; i++) {
            double one = residual[i] / standard[i];
            squares += one * one;
            double[] by = moved[i];
            for (int b = 0; b < tolerances; b++) {
                push[b] += by[b] * one;
            }
        }
        solve(push, off);
        for (int b = 0; b < tolerances; b++) {
            squares -= off[b] * push[b];
        }
        return squares;
    }

    /** Forward, then backward through the triangle. */
    private void solve(double[] right, double[] solution) {
        for (int a = 0; a < tolerances; a++) {
            double sum = right[a];
            for (int b = 0; b < a; b++) {
                sum -= lower[a][b] * solution[b];
            }
            solution[a] = sum / lower[a][a];
        }
        for (int a = tolerances - 1; a >= 0; a--) {
            double sum = solution[a];
            for (int b = a + 1; b < tolerances; b++) {
                sum -= lower[b][a] * solution[b];
            }
            solution[a] = sum / lower[a][a];
        }
    }

    /** {@return variance that the tolerances, as far as the readings know them, leave a further reading} */
    double left(double[] movedThere) {
        double[] solution = new double[tolerances];
        solve(movedThere, solution);
        double sum = 0;
        for (int a = 0; a < tolerances; a++) {
            sum += movedThere[a] * solution[a];
        }
        return sum;
    }
}
