package org.leat.electrics;

/**
 * Bridge with two diodes conducting at a time and no overlap of phases: close to cut-in. A pulse begins where the line
 * voltage reaches the bus, √3 E sin(θ + π/6) = V', and obeys X i' + (R + ρ/2) i = (√3 E sin(θ + π/6) − V')/2.
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
        // at a sixth of a period the next pair takes over
        double end = end(pulse, SIXTH);
        double square = Math.max(0, pulse.integralOfSquare(end));
        return BridgeCurrents.of(Math.max(0, pulse.integral(end)), square, 2 * square, ConductionMode.ISOLATED_PULSES);
    }

    /** {@return where a current ends, rad; the far side where it still flows there} */
    static double end(Arc pulse, double far) {
        if (pulse.at(far) > 0) {
            return far;
        }
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
