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
    /** By tolerance and reading, in the readings' standard uncertainties. */
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
        this.moved = new double[tolerances][n];
        double log = 0;
        for (int i = 0; i < n; i++) {
            Observation seen = readings.get(i);
            read[i] = seen.value();
            standard[i] = Math.sqrt(seen.standard() * seen.standard() + model[i] * model[i]);
            log += 2 * Math.log(standard[i] / seen.standard());
            for (int b = 0; b < tolerances; b++) {
                this.moved[b][i] = moved[i][b] / standard[i];
            }
        }
        this.lower = new double[tolerances][];
        for (int a = 0; a < tolerances; a++) {
            double[] row = new double[a + 1];
            double[] byA = this.moved[a];
            for (int b = 0; b <= a; b++) {
                double[] byB = this.moved[b];
                double sum = a == b ? 1 : 0;
                for (int i = 0; i < n; i++) {
                    sum += byA[i] * byB[i];
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
     * Residuals in standard uncertainties, and what of them the tolerances may take up: L⁻¹ Sᵀ C₀⁻¹ r. Both go straight with the
     * residuals, so that those of a size between two need not be worked out.
     *
     * @param scaled one for each reading
     * @param taken one for each tolerance
     */
    @SuppressWarnings("ArrayRecordComponent") // numbers that are only read
    record Part(double[] scaled, double[] taken) {

        /** {@return the product that is χ² of a part with itself} */
        double times(Part other) {
            double sum = 0;
            for (int i = 0; i < scaled.length; i++) {
                sum += scaled[i] * other.scaled[i];
            }
            for (int b = 0; b < taken.length; b++) {
                sum -= taken[b] * other.taken[b];
            }
            return sum;
        }

        /** {@return part of the way to another} */
        Part mixed(Part to, double share) {
            return new Part(FaultTable.mixed(scaled, to.scaled, share), FaultTable.mixed(taken, to.taken, share));
        }
    }

    /**
     * What the readings say.
     *
     * @param logLikelihood but for what is the same for every fault
     * @param squares χ²
     * @param evidence that says it
     * @param from residuals
     * @param to those at the other end of a step
     * @param share of the way between
     */
    record Said(double logLikelihood, double squares, Evidence evidence, Part from, Part to, double share) {

        /** {@return how far each tolerance of building is off, in its standard uncertainty} */
        double[] tolerances() {
            return evidence.backward(FaultTable.mixed(from.taken(), to.taken(), share));
        }
    }

    /** {@return the residuals of the readings against a plant that would let one read these values} */
    Part against(double[] expected) {
        double[] residual = new double[read.length];
        for (int i = 0; i < read.length; i++) {
            residual[i] = read[i] - expected[i];
        }
        return part(residual);
    }

    /** {@return residuals of that much} */
    Part part(double[] residual) {
        double[] scaled = new double[residual.length];
        double[] push = new double[tolerances];
        for (int i = 0; i < residual.length; i++) {
            scaled[i] = residual[i] / standard[i];
        }
        for (int b = 0; b < tolerances; b++) {
            double[] by = moved[b];
            double sum = 0;
            for (int i = 0; i < scaled.length; i++) {
                sum += by[i] * scaled[i];
            }
            push[b] = sum;
        }
        return new Part(scaled, forward(push));
    }

    /** {@return what the readings say part of the way between two plants} */
    Said between(Part from, Part to, double share) {
        double squares = squares(from.times(from), from.times(to), to.times(to), share);
        return new Said(logLikelihood(squares), squares, this, from, to, share);
    }

    /** {@return ln of the likelihood by χ²} */
    double logLikelihood(double squares) {
        return -0.5 * (squares + logDeterminant);
    }

    /** {@return χ² part of the way, from those at both ends and their product} */
    static double squares(double from, double both, double to, double share) {
        return (1 - share) * (1 - share) * from + 2 * share * (1 - share) * both + share * share * to;
    }

    private double[] forward(double[] right) {
        double[] solution = right.clone();
        for (int a = 0; a < tolerances; a++) {
            double[] row = lower[a];
            double sum = solution[a];
            for (int b = 0; b < a; b++) {
                sum -= row[b] * solution[b];
            }
            solution[a] = sum / row[a];
        }
        return solution;
    }

    private double[] backward(double[] right) {
        double[] solution = right.clone();
        for (int a = tolerances - 1; a >= 0; a--) {
            double[] row = lower[a];
            solution[a] /= row[a];
            for (int b = 0; b < a; b++) {
                solution[b] -= row[b] * solution[a];
            }
        }
        return solution;
    }

    /** {@return variance that the tolerances, as far as the readings know them, leave a further reading} */
    double left(double[] movedThere) {
        double sum = 0;
        for (double one : forward(movedThere)) {
            sum += one * one;
        }
        return sum;
    }
}
