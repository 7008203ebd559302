package org.leat.electrics;

import org.jspecify.annotations.Nullable;

/**
 * Bridge with two diodes conducting, and three while phase a takes over from phase c: one root for the commutation
 * overlap μ. Phase a begins at sin θ1 = (V' + ρ I0)/(3E), I0 being the direct current at that instant.
 *
 * <pre>
 * 0 … μ     X u' + (R + 2ρ/3) u = E sin(θ + π/3) − 2V'/3,   u = i_a + i_c, u(0) = I0
 *           X w' + R w = √3 E sin(θ − π/6),                 w = i_a − i_c, w(0) = −I0, u(μ) = w(μ)
 * μ … π/3   X i' + (R + ρ/2) i = (√3 E sin(θ + π/6) − V')/2,   i(μ) = u(μ), i(π/3) = I0
 * </pre>
 *
 * <p>E phase EMF peak (V), X reactance, R phase resistance, ρ resistance on the d.c. side (Ω), V' bus EMF and two diode
 * thresholds (V). Exact for sine EMF and straight-line diodes.
 */
final class Commutation {

    private static final double SIXTH = Math.PI / 3;
    private static final double ROOT3 = Math.sqrt(3);

    private final double e;
    private final double x;
    private final double r;
    private final double v;
    private final double ru;
    private final double rt;
    private final Arc u;
    private final Arc w;
    private final Arc pair;
    private final double sine;
    private final double cosine;

    /** One trial: the angle θ1 that belongs to a direct current I0 at its instant. */
    private Commutation(double e, double x, double r, double v, double rho, double i0) {
        this.e = e;
        this.x = x;
        this.r = r;
        this.v = v;
        this.ru = r + 2 * rho / 3;
        this.rt = r + rho / 2;
        this.sine = Math.min(1, (v + rho * i0) / (3 * e));
        this.cosine = Math.sqrt(1 - sine * sine);
        this.u = upper(0);
        this.w = difference(0);
        this.pair = pair(sine * ROOT3 / 2 + cosine / 2, cosine * ROOT3 / 2 - sine / 2, 0);
    }

    private Arc upper(double i0) {
        return Arc.of(e, 0.5 * sine + ROOT3 / 2 * cosine, 0.5 * cosine - ROOT3 / 2 * sine, 2 * v / 3, ru, x, i0);
    }

    private Arc difference(double i0) {
        return Arc.of(ROOT3 * e, ROOT3 / 2 * sine - 0.5 * cosine, ROOT3 / 2 * cosine + 0.5 * sine, 0, r, x, -i0);
    }

    private Arc pair(double sin, double cos, double start) {
        return Arc.of(ROOT3 * e / 2, sin, cos, v / 2, rt, x, start);
    }

    /** {@return the currents, or null where the phases do not overlap} Arguments as in {@link ThreeModeBridge}. */
    static @Nullable BridgeCurrents solve(double e, double x, double r, double v, double rho) {
        Commutation first = new Commutation(e, x, r, v, rho, 0);
        if (!(first.pair.at(SIXTH) > 0)) {
            return null;
        }
        double mu = first.overlap();
        if (rho == 0) {
            return first.currents(mu);
        }
        // a bracket on I0, then a secant inside it
        double low = 0;
        double lowError = first.start(mu);
        double high = lowError;
        Commutation trial = new Commutation(e, x, r, v, rho, high);
        mu = trial.overlap();
        double highError = trial.start(mu) - high;
        for (int n = 0; n < 60 && highError > 0; n++) {
            low = high;
            lowError = highError;
            high += 1.1 * highError;
            trial = new Commutation(e, x, r, v, rho, high);
            mu = trial.overlap();
            highError = trial.start(mu) - high;
        }
        for (int n = 0; n < 60 && high - low > 1e-9 * high && highError != 0; n++) {
            double i0 = low + (high - low) * lowError / (lowError - highError);
            if (!(i0 > low && i0 < high)) {
                i0 = 0.5 * (low + high);
            }
            trial = new Commutation(e, x, r, v, rho, i0);
            mu = trial.overlap();
            double error = trial.start(mu) - i0;
            if (Math.abs(error) < 1e-9 * high) {
                break;
            }
            if (error > 0) {
                low = i0;
                lowError = error;
                highError *= 0.5;
            } else {
                high = i0;
                highError = error;
                lowError *= 0.5;
            }
        }
        return trial.currents(mu);
    }

    /** {@return I0 for which the outgoing current ends at μ; if the phases never stop overlapping, I0 that repeats} */
    private double start(double mu) {
        if (mu == SIXTH) {
            return -u.at(SIXTH) / Math.expm1(-u.a() * SIXTH);
        }
        return (w.at(mu) - u.at(mu)) / (Math.exp(-u.a() * mu) + Math.exp(-w.a() * mu));
    }

    /** {@return what is left of i(π/3) − I0, scaled so that no exponential overflows} */
    private double rest(double mu) {
        double sin = Math.sin(mu);
        double cos = Math.cos(mu);
        double xu = Math.exp(-u.a() * mu);
        double xw = ru == r ? xu : Math.exp(-w.a() * mu);
        double xt = Math.exp(-pair.a() * (SIXTH - mu));
        double atU = u.s() * cos + u.q() * sin + u.c() + u.t() * xu;
        double atW = w.s() * cos + w.q() * sin + w.t() * xw;
        double settled = pair.s() * (0.5 - cos * xt) + pair.q() * (ROOT3 / 2 - sin * xt) + pair.c() * (1 - xt);
        return settled * (xu + xw) + xt * (atU * xw + atW * xu) - (atW - atU);
    }

    /** {@return μ: the root of {@link #rest}, or π/3 where the phases never stop overlapping} */
    private double overlap() {
        double low = 0;
        double atLow = 2 * pair.at(SIXTH);
        double high = SIXTH;
        double atHigh = rest(SIXTH);
        if (atLow <= 0) {
            return 0;
        }
        if (atHigh >= 0) {
            return SIXTH;
        }
        return Roots.between(this::rest, low, atLow, high, atHigh, 1e-11);
    }

    private BridgeCurrents currents(double mu) {
        double i0 = start(mu);
        Arc up = upper(i0);
        Arc apart = difference(i0);
        double sin = Math.sin(mu);
        double cos = Math.cos(mu);
        double sine6 = sine * ROOT3 / 2 + cosine / 2;
        double cosine6 = cosine * ROOT3 / 2 - sine / 2;
        Arc two = pair(sine6 * cos + cosine6 * sin, cosine6 * cos - sine6 * sin, up.at(mu));
        double left = SIXTH - mu;
        double squareUp = up.integralOfSquare(mu);
        double squareTwo = two.integralOfSquare(left);
        double phases = 1.5 * squareUp + 0.5 * apart.integralOfSquare(mu) + 2 * squareTwo;
        return BridgeCurrents.of(
                up.integral(mu) + two.integral(left), squareUp + squareTwo, phases, ConductionMode.COMMUTATION);
    }
}
