package org.leat.electrics;

/**
 * Current of a resistance and a reactance in series, driven by a sine less a constant voltage, over one stretch of angle
 * in which no diode switches: i(d) = s cos d + q sin d + t exp(−a d) + c, d in electrical radians from the stretch's
 * beginning. Exact solution of X di/dd + R i = D sin(angle + d) − K. All integrals in closed form.
 *
 * <p>Needs 10⁻⁴ ≤ R/X ≤ 10⁴ (below, the constant and the decaying part cancel; the callers hold that range).
 *
 * @param s cosine part of the settled current, A
 * @param q sine part of the settled current, A
 * @param c constant part, −K/R, A
 * @param t part that decays, A
 * @param a R/X
 */
record Arc(double s, double q, double c, double t, double a) {

    private static final double HALF3 = Math.sqrt(3) / 2;

    /**
     * {@return the current of one stretch}
     *
     * @param drive D, peak of the driving sine, V
     * @param sine sine of its angle at d = 0
     * @param cosine cosine of that angle
     * @param back K, V
     * @param r resistance, Ω
     * @param x reactance, Ω
     * @param start current at d = 0, A
     */
    static Arc of(double drive, double sine, double cosine, double back, double r, double x, double start) {
        double g = drive / (r * r + x * x);
        double s = g * (r * sine - x * cosine);
        double c = -back / r;
        return new Arc(s, g * (r * cosine + x * sine), c, start - s - c, r / x);
    }

    /** {@return i_a + i_c while a and c lie on the positive rail, b on the negative one; θ at d = 0 by sine and cosine} */
    static Arc upper(double e, double sine, double cosine, double v, double ru, double x, double start) {
        return of(e, 0.5 * sine + HALF3 * cosine, 0.5 * cosine - HALF3 * sine, 2 * v / 3, ru, x, start);
    }

    /** {@return i_a − i_c in the same state} */
    static Arc difference(double e, double sine, double cosine, double r, double x, double start) {
        return of(2 * HALF3 * e, HALF3 * sine - 0.5 * cosine, HALF3 * cosine + 0.5 * sine, 0, r, x, start);
    }

    /** {@return the current while only a and b conduct; θ at d = 0 by sine and cosine} */
    static Arc pair(double e, double sine, double cosine, double v, double rt, double x, double start) {
        return of(HALF3 * e, HALF3 * sine + 0.5 * cosine, HALF3 * cosine - 0.5 * sine, v / 2, rt, x, start);
    }

    /** {@return i(d), A} */
    double at(double d) {
        return s * Math.cos(d) + q * Math.sin(d) + c + t * Math.exp(-a * d);
    }

    /** {@return di/dd, A/rad} */
    double slopeAt(double d) {
        return q * Math.cos(d) - s * Math.sin(d) - a * t * Math.exp(-a * d);
    }

    /** {@return ∫ i from 0 to h, A·rad} */
    double integral(double h) {
        return s * Math.sin(h) + q * (1 - Math.cos(h)) + c * h - t * Math.expm1(-a * h) / a;
    }

    /** {@return ∫ i² from 0 to h, A²·rad} */
    double integralOfSquare(double h) {
        double sin = Math.sin(h);
        double cos = Math.cos(h);
        double e = Math.exp(-a * h);
        double n = 1 + a * a;
        double withCosine = (a + e * (sin - a * cos)) / n;
        double withSine = (1 - e * (cos + a * sin)) / n;
        return 0.5 * (s * s * (h + sin * cos) + q * q * (h - sin * cos))
                + s * q * sin * sin
                + c * c * h
                + t * t * (1 - e * e) / (2 * a)
                + 2 * t * (s * withCosine + q * withSine + c * (1 - e) / a)
                + 2 * c * (s * sin + q * (1 - cos));
    }
}
