package org.leat.electrics;

import org.jspecify.annotations.Nullable;

/**
 * Bridge with three diodes conducting at every instant, closed form. In a sixth of a period the phases a and c lie on
 * the positive rail, b on the negative one. With u = i_a + i_c = i_dc and w = i_a − i_c:
 *
 * <pre>
 * X u' + (R + 2ρ/3) u = E sin(θ + π/3) − 2V'/3        u(0) = u(π/3) = I0
 * X w' + R w          = √3 E sin(θ − π/6)             w(0) = −I0, w(π/3) = I0
 * </pre>
 *
 * <p>Both conditions are linear in I0, sin θ0 and cos θ0, where θ0 is the angle at which i_a passes zero. Valid while the
 * phase that passes zero would be drawn on at once: E sin θ0 ≥ (V' + ρ I0)/3. With ρ = 0 the same result as the Fourier
 * sum of the six-step voltage: I_dc = (3/π)[(E/Z) cos α − …].
 *
 * <p>E phase EMF peak (V), X reactance, R phase resistance with cable and diode slope, ρ resistance on the d.c. side (Ω),
 * V' bus EMF and two diode thresholds (V). Source: circuit equations of the ideal bridge; Krause, Analysis of Electric
 * Machinery, chapter on rectifier converters (from memory) has the modes for a smooth current, not for a battery.
 */
final class FullConduction {

    private static final double SIXTH = Math.PI / 3;
    private static final double ROOT3 = Math.sqrt(3);

    private FullConduction() {}

    /** {@return the currents, or null where a phase would block} Arguments as in {@link ThreeModeBridge}. */
    static @Nullable BridgeCurrents solve(double e, double x, double r, double v, double rho) {
        double ru = r + 2 * rho / 3;
        double xu = Math.exp(-ru / x * SIXTH);
        double xw = rho == 0 ? xu : Math.exp(-r / x * SIXTH);
        double gu = e / (ru * ru + x * x);
        double gw = ROOT3 * e / (r * r + x * x);
        // settled cosine and sine parts, as factors of sin θ0 (p) and of cos θ0 (k)
        double pu = gu * (0.5 * ru + ROOT3 / 2 * x);
        double ku = gu * (ROOT3 / 2 * ru - 0.5 * x);
        double pw = gw * (ROOT3 / 2 * r - 0.5 * x);
        double kw = gw * (-0.5 * r - ROOT3 / 2 * x);
        // I0 = (pw' sin θ0 + kw' cos θ0) = (pu' sin θ0 + ku' cos θ0) − 2V'/(3 Ru)
        double pw1 = (pw * (0.5 - xw) - kw * ROOT3 / 2) / (1 + xw);
        double kw1 = (kw * (0.5 - xw) + pw * ROOT3 / 2) / (1 + xw);
        double pu1 = (pu * (0.5 - xu) - ku * ROOT3 / 2) / (1 - xu);
        double ku1 = (ku * (0.5 - xu) + pu * ROOT3 / 2) / (1 - xu);
        double p = pu1 - pw1;
        double k = ku1 - kw1;
        double m2 = p * p + k * k;
        double back = 2 * v / (3 * ru);
        double rest = m2 - back * back;
        if (!(rest > 0)) {
            return null;
        }
        double root = Math.sqrt(rest);
        // p sin θ0 + k cos θ0 = back; of the two angles the one whose current is positive
        double sine = (p * back + k * root) / m2;
        double cosine = (k * back - p * root) / m2;
        double i0 = pw1 * sine + kw1 * cosine;
        if (!(i0 > 0) || 3 * e * sine < v + rho * i0) {
            return null;
        }
        Arc u = Arc.upper(e, sine, cosine, v, ru, x, i0);
        Arc w = Arc.difference(e, sine, cosine, r, x, -i0);
        double uu = u.integralOfSquare(SIXTH);
        double phases = 1.5 * uu + 0.5 * w.integralOfSquare(SIXTH);
        return BridgeCurrents.of(u.integral(SIXTH), uu, phases, ConductionMode.FULL);
    }
}
