package org.leat.electrics;

import org.jspecify.annotations.Nullable;

/**
 * Bridge with two diodes conducting, and three while phase a takes over from phase c. Unknown are the overlap μ and the
 * direct current I0 at the instant when phase a begins, sin θ1 = (V' + ρ I0)/(3E):
 *
 * <pre>
 * 0 … μ     X u' + (R + 2ρ/3) u = E sin(θ + π/3) − 2V'/3,   u = i_a + i_c, u(0) = I0
 *           X w' + R w = √3 E sin(θ − π/6),                 w = i_a − i_c, w(0) = −I0, u(μ) = w(μ)
 * μ … π/3   X i' + (R + ρ/2) i = (√3 E sin(θ + π/6) − V')/2,   i(μ) = u(μ), i(π/3) = I0
 * </pre>
 *
 * <p>E phase EMF peak (V), X reactance, R phase resistance, ρ resistance on the d.c. side (Ω), V' bus EMF and two diode
 * thresholds (V). Newton's method in both unknowns with the exact derivatives of {@link
 * CommutationEquations}; {@link CommutationSearch} where it does not settle. Exact for sine EMF and straight-line diodes.
 */
final class Commutation {

    private static final double SIXTH = Math.PI / 3;

    private Commutation() {}

    /** {@return the currents, or null where the phases do not overlap} Arguments as in {@link ThreeModeBridge}. */
    static @Nullable BridgeCurrents solve(double e, double x, double r, double v, double rho) {
        double s = v / (3 * e);
        double c = Math.sqrt(1 - s * s);
        if (!(Arc.pair(e, s, c, v, r + rho / 2, x, 0).at(SIXTH) > 0)) {
            return null;
        }
        CommutationEquations trial = new CommutationEquations(e, x, r, v, rho);
        double mean = (4.962 * e / 3 - v) / (3 / Math.PI * x + 2 * r + rho);
        double i0 = Math.max(0.85 * mean, 0.02 * e / (x + r + rho));
        double mu = 0.6;
        for (int n = 0; n < 12; n++) {
            trial.at(mu, i0);
            double stepMu = trial.stepMu();
            double stepI = trial.stepI();
            mu = Math.min(Math.max(mu + stepMu, 0.3 * mu), 0.3 * mu + 0.7 * SIXTH);
            i0 = Math.max(i0 + stepI, 0.3 * i0);
            if (Math.abs(stepMu) < 1e-6 && Math.abs(stepI) < 1e-6 * i0) {
                return CommutationSearch.currents(e, x, r, v, rho, i0, mu);
            }
        }
        return CommutationSearch.solve(e, x, r, v, rho);
    }
}
