package org.leat.electrics;

/**
 * Bridge with two diodes conducting at a time and no overlap of phases: close to cut-in. A pulse begins where the line
 * voltage reaches the bus, √3 E sin(θ + π/6) = V', and obeys X i' + (R + ρ/2) i = (√3 E sin(θ + π/6) − V')/2. If it has
 * not ended after a sixth of a period, the next pair of diodes takes over at the instant the current touches zero.
 *
 * <p>E phase EMF peak (V), X reactance, R phase resistance, ρ resistance on the d.c. side (Ω), V' bus EMF and two diode
 * thresholds (V). Exact for sine EMF and straight-line diodes.
 */
final class IsolatedPulses {

    private static final double SIXTH = Math.PI / 3;
    private static final double ROOT3 = Math.sqrt(3);

    private IsolatedPulses() {}

    /** {@return the currents} Arguments as in {@link ThreeModeBridge}; V' below √3 E. */
    static BridgeCurrents solve(double e, double x, double r, double v, double rho) {
        double rt = r + rho / 2;
        double sine = v / (ROOT3 * e);
        Arc pulse = Arc.of(ROOT3 * e / 2, sine, Math.sqrt(1 - sine * sine), v / 2, rt, x, 0);
        if (pulse.at(SIXTH) > 0) {
            return touching(e, x, rt, v);
        }
        return currents(pulse, end(pulse, SIXTH), ConductionMode.ISOLATED_PULSES);
    }

    /** Pulses of exactly a sixth of a period: i(0) = i(π/3) = 0 gives their beginning in closed form. */
    private static BridgeCurrents touching(double e, double x, double rt, double v) {
        double decay = Math.exp(-rt / x * SIXTH);
        double g = ROOT3 * e / 2 / (rt * rt + x * x);
        double p = g * (rt * (0.5 - decay) + x * ROOT3 / 2);
        double k = g * (rt * ROOT3 / 2 - x * (0.5 - decay));
        double back = v / (2 * rt) * (1 - decay);
        double m2 = p * p + k * k;
        double root = Math.sqrt(Math.max(0, m2 - back * back));
        double sine = (p * back - k * root) / m2;
        double cosine = (k * back + p * root) / m2;
        Arc pulse = Arc.of(ROOT3 * e / 2, sine, cosine, v / 2, rt, x, 0);
        return currents(pulse, SIXTH, ConductionMode.TOUCHING_PULSES);
    }

    private static BridgeCurrents currents(Arc pulse, double end, ConductionMode mode) {
        double square = Math.max(0, pulse.integralOfSquare(end));
        return BridgeCurrents.of(Math.max(0, pulse.integral(end)), square, 2 * square, mode);
    }

    /** {@return where a current that is not above nil at the far side ends, rad} */
    static double end(Arc pulse, double far) {
        double low = 0;
        double high = far;
        double d = high;
        for (int n = 0; n < 60; n++) {
            double i = pulse.at(d);
            if (i > 0) {
                low = d;
            } else {
                high = d;
            }
            double slope = pulse.slopeAt(d);
            double next = d - i / slope;
            if (!(slope < 0 && next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - d) < 1e-12 * SIXTH) {
                return next;
            }
            d = next;
        }
        return d;
    }
}
