package org.leat.electrics;

import org.jspecify.annotations.Nullable;

/**
 * Bridge close to cut-in (V' above 3E/2), where the pulse of one pair may still flow when the next phase is drawn on, and
 * yet the current pauses afterwards: the line voltage stays below the bus until θs, √3 E sin(θs + π/6) = V'. The course
 * begins anew from zero at θs in each sixth of a period, so that every arc follows from the one before, without a loop:
 *
 * <pre>
 * θs … θ1 + π/3      pair on; ends where 3 E sin(θ − π/3) = V' + ρ i
 * θ1 … θ1 + μ        the next phase takes over (see {@link Commutation})
 * θ1 + μ … below θs  the new pair's current falls to zero
 * </pre>
 *
 * <p>E phase EMF peak (V), X reactance, R phase resistance, ρ resistance on the d.c. side (Ω), V' bus EMF and two diode
 * thresholds (V). Exact for sine EMF and straight-line diodes.
 */
final class OverlappingPulses {

    private static final double SIXTH = Math.PI / 3;
    private static final double ROOT3 = Math.sqrt(3);

    private OverlappingPulses() {}

    /** {@return the currents, or null where they do not pause or V' is too low} Arguments as in {@link ThreeModeBridge}. */
    static @Nullable BridgeCurrents solve(double e, double x, double r, double v, double rho) {
        if (v <= 1.5 * e) {
            return null;
        }
        double begin = Math.asin(v / (ROOT3 * e)) - Math.PI / 6;
        double rt = r + rho / 2;
        Arc pulse = Arc.pair(e, Math.sin(begin), Math.cos(begin), v, rt, x, 0);
        double end = IsolatedPulses.end(pulse, SIXTH);
        double atEnd = drawn(e, v, rho, begin, pulse, end);
        if (atEnd <= 0) {
            return end < SIXTH ? IsolatedPulses.solve(e, x, r, v, rho) : null;
        }
        double on = IllinoisMethod.between(
                d -> drawn(e, v, rho, begin, pulse, d), 0, drawn(e, v, rho, begin, pulse, 0), end, atEnd, 1e-11);
        double i0 = pulse.at(on);
        double gap = SIXTH - on;
        double sine = Math.sin(begin - gap);
        double cosine = Math.cos(begin - gap);
        Arc u = Arc.upper(e, sine, cosine, v, r + 2 * rho / 3, x, i0);
        Arc w = Arc.difference(e, sine, cosine, r, x, -i0);
        double open = u.at(gap) - w.at(gap);
        if (open > 0) {
            return null;
        }
        double mu = IllinoisMethod.between(d -> u.at(d) - w.at(d), 0, 2 * i0, gap, open, 1e-11);
        Arc last = Arc.pair(e, Math.sin(begin - gap + mu), Math.cos(begin - gap + mu), v, rt, x, u.at(mu));
        if (last.at(gap - mu) > 0) {
            return null;
        }
        double tail = IsolatedPulses.end(last, gap - mu);
        double square = pulse.integralOfSquare(on) + last.integralOfSquare(tail);
        double three = u.integralOfSquare(mu);
        return BridgeCurrents.of(
                pulse.integral(on) + u.integral(mu) + last.integral(tail),
                square + three,
                2 * square + 1.5 * three + 0.5 * w.integralOfSquare(mu),
                ConductionMode.OVERLAPPING_PULSES);
    }

    /** {@return by how much the next phase exceeds what it needs to be drawn on, V} */
    private static double drawn(double e, double v, double rho, double begin, Arc pulse, double d) {
        return 3 * e * Math.sin(begin + d - SIXTH) - v - rho * pulse.at(d);
    }
}
