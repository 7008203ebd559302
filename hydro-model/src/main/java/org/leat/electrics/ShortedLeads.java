package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Currents of the three leads of a machine whose leads are all joined, its phases not alike, its star point free:
 * V_n = Σ(E_x/Z_x)/Σ(1/Z_x) and I_x = (E_x − V_n)/Z_x with Z_x = R_x + jω_e L. Of phases that are alike E/Z, as
 * {@link ShortCircuitTorque#current}.
 *
 * <p>Range: a sine machine at steady speed, one inductance for all phases and no coupling that is not in it; resistances and
 * inductance not both nil. Other arguments are refused.
 *
 * <p>Source: circuit equations; displacement of the star point as in any text on unbalanced stars (Millman 1940, from memory).
 */
public final class ShortedLeads {

    private ShortedLeads() {}

    /**
     * {@return rms of the leads A, B, C, in A}
     *
     * @param emfs of the phases, rms, each 120° behind the one before, V; below nil where one is wired the wrong way round
     * @param resistances of the phases, Ω; very large where one is open
     * @param reactance of one phase, Ω
     */
    public static double[] currents(double[] emfs, double[] resistances, double reactance) {
        Physical.notNegative("reactance", reactance);
        double[] real = new double[3];
        double[] imaginary = new double[3];
        double[] conductance = new double[3];
        double[] susceptance = new double[3];
        double drivenReal = 0;
        double drivenImaginary = 0;
        double allReal = 0;
        double allImaginary = 0;
        for (int x = 0; x < 3; x++) {
            double angle = -2 * Math.PI / 3 * x;
            Physical.finite("phase EMF", emfs[x]);
            Physical.notNegative("resistance of the phase", resistances[x]);
            Physical.positive("impedance of the phase", Math.hypot(resistances[x], reactance));
            real[x] = emfs[x] * Math.cos(angle);
            imaginary[x] = emfs[x] * Math.sin(angle);
            double square = resistances[x] * resistances[x] + reactance * reactance;
            conductance[x] = resistances[x] / square;
            susceptance[x] = -reactance / square;
            drivenReal += real[x] * conductance[x] - imaginary[x] * susceptance[x];
            drivenImaginary += real[x] * susceptance[x] + imaginary[x] * conductance[x];
            allReal += conductance[x];
            allImaginary += susceptance[x];
        }
        double square = allReal * allReal + allImaginary * allImaginary;
        double starReal = (drivenReal * allReal + drivenImaginary * allImaginary) / square;
        double starImaginary = (drivenImaginary * allReal - drivenReal * allImaginary) / square;
        double[] currents = new double[3];
        for (int x = 0; x < 3; x++) {
            currents[x] = Math.hypot(real[x] - starReal, imaginary[x] - starImaginary)
                    * Math.hypot(conductance[x], susceptance[x]);
        }
        return currents;
    }
}
