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
 * thresholds (V). Newton's method in both unknowns with exact derivatives; {@link CommutationSearch} where it does not
 * settle. Exact for sine EMF and straight-line diodes.
 */
final class Commutation {

    private static final double SIXTH = Math.PI / 3;
    private static final double H = Math.sqrt(3) / 2;

    private Commutation() {}

    /** {@return the currents, or null where the phases do not overlap} Arguments as in {@link ThreeModeBridge}. */
    static @Nullable BridgeCurrents solve(double e, double x, double r, double v, double rho) {
        double rt = r + rho / 2;
        double s = v / (3 * e);
        double c = Math.sqrt(1 - s * s);
        if (!(Arc.pair(e, s, c, v, rt, x, 0).at(SIXTH) > 0)) {
            return null;
        }
        double ru = r + 2 * rho / 3;
        double gu = e / (ru * ru + x * x);
        double gw = 2 * H * e / (r * r + x * x);
        double gt = H * e / (rt * rt + x * x);
        double cu = -2 * v / (3 * ru);
        double ct = -v / (2 * rt);
        double mean = (4.962 * e / 3 - v) / (3 / Math.PI * x + 2 * r + rho);
        double i0 = Math.max(0.85 * mean, 0.02 * e / (x + r + rho));
        double mu = 0.6;
        for (int n = 0; n < 12; n++) {
            s = Math.min((v + rho * i0) / (3 * e), 0.999);
            c = Math.sqrt(1 - s * s);
            double turn = rho / (3 * e * c);
            double sin = Math.sin(mu);
            double cos = Math.cos(mu);
            double xu = Math.exp(-ru / x * mu);
            double xw = rho == 0 ? xu : Math.exp(-r / x * mu);
            double xt = Math.exp(-rt / x * (SIXTH - mu));
            double su = gu * (ru * (0.5 * s + H * c) - x * (0.5 * c - H * s));
            double qu = gu * (ru * (0.5 * c - H * s) + x * (0.5 * s + H * c));
            double sw = gw * (r * (H * s - 0.5 * c) - x * (H * c + 0.5 * s));
            double qw = gw * (r * (H * c + 0.5 * s) + x * (H * s - 0.5 * c));
            double st = gt * (rt * (H * s + 0.5 * c) - x * (H * c - 0.5 * s));
            double qt = gt * (rt * (H * c - 0.5 * s) + x * (H * s + 0.5 * c));
            double u = su * (cos - xu) + qu * sin + cu * (1 - xu);
            double w = sw * (cos - xw) + qw * sin;
            double t = st * (0.5 - cos * xt) + qt * (H - sin * xt) + ct * (1 - xt);
            double uMu = -su * sin + qu * cos + ru / x * xu * (su + cu);
            double wMu = -sw * sin + qw * cos + r / x * xw * sw;
            double tMu = xt * (st * sin - qt * cos - rt / x * (st * cos + qt * sin + ct));
            double uTurn = qu * (cos - xu) - su * sin;
            double wTurn = qw * (cos - xw) - sw * sin;
            double tTurn = qt * (0.5 - cos * xt) - st * (H - sin * xt);
            double f = w - u - i0 * (xu + xw);
            double fMu = wMu - uMu + i0 * (ru * xu + r * xw) / x;
            double fI = (wTurn - uTurn) * turn - xu - xw;
            double g = t + xt * (u + i0 * xu) - i0;
            double gMu = tMu + xt * (rt / x * (u + i0 * xu) + uMu - i0 * ru / x * xu);
            double gI = (tTurn + xt * uTurn) * turn + xt * xu - 1;
            double determinant = fMu * gI - fI * gMu;
            double stepMu = (g * fI - f * gI) / determinant;
            double stepI = (f * gMu - g * fMu) / determinant;
            mu = Math.min(Math.max(mu + stepMu, 0.3 * mu), 0.3 * mu + 0.7 * SIXTH);
            i0 = Math.max(i0 + stepI, 0.3 * i0);
            if (Math.abs(stepMu) < 1e-6 && Math.abs(stepI) < 1e-6 * i0) {
                return CommutationSearch.currents(e, x, r, v, rho, i0, mu);
            }
        }
        return CommutationSearch.solve(e, x, r, v, rho);
    }
}
