package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Loss coefficients of a valve against its opening; between two points {@code 1/√K}, which the flow follows where the valve
 * decides it, is straight, and it falls straight to nothing where the valve is shut.
 */
final class PartOpenTable {

    private final double[] openings;
    private final double[] conductances;

    /** Takes openings, rising from the last one that is shut to 1, and K at each; infinite where it is shut. */
    PartOpenTable(double[] openings, double[] lossCoefficients) {
        this.openings = openings.clone();
        conductances = new double[openings.length];
        for (int i = 0; i < openings.length; i++) {
            conductances[i] = 1 / Math.sqrt(lossCoefficients[i]);
        }
    }

    /** {@return K at an opening; infinite where shut} */
    double coefficient(double opening) {
        Physical.within("opening", opening, 0, 1);
        if (opening <= openings[0]) {
            return Double.POSITIVE_INFINITY;
        }
        int i = 1;
        while (opening > openings[i]) {
            i++;
        }
        double share = (opening - openings[i - 1]) / (openings[i] - openings[i - 1]);
        double conductance = conductances[i - 1] + share * (conductances[i] - conductances[i - 1]);
        return 1 / (conductance * conductance);
    }
}
