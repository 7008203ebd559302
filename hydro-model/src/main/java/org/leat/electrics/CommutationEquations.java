package org.leat.electrics;

/**
 * What is left over of the two conditions of {@link Commutation} at a trial of overlap and current, and its derivatives:
 * f = w(μ) − u(μ), g = i(π/3) − I0. The current settles to sines whose parts depend on θ1, which turns with I0:
 * dθ1/dI0 = ρ/(3 E cos θ1).
 *
 * <p>A mutable object for one solution; symbols and units as in {@link Commutation}.
 */
final class CommutationEquations {

    private static final double SIXTH = Math.PI / 3;
    private static final double H = Math.sqrt(3) / 2;

    private final double e;
    private final double x;
    private final double r;
    private final double v;
    private final double rho;
    private final double ru;
    private final double rt;
    private final double gu;
    private final double gw;
    private final double gt;
    private final double cu;
    private final double ct;

    private double f;
    private double fMu;
    private double fI;
    private double g;
    private double gMu;
    private double gI;

    CommutationEquations(double e, double x, double r, double v, double rho) {
        this.e = e;
        this.x = x;
        this.r = r;
        this.v = v;
        this.rho = rho;
        this.rt = r + rho / 2;
        this.ru = r + 2 * rho / 3;
        this.gu = e / (ru * ru + x * x);
        this.gw = 2 * H * e / (r * r + x * x);
        this.gt = H * e / (rt * rt + x * x);
        this.cu = -2 * v / (3 * ru);
        this.ct = -v / (2 * rt);
    }

    /** Looks at one trial. */
    void at(double mu, double i0) {
        double s = Math.min((v + rho * i0) / (3 * e), 0.999);
        double c = Math.sqrt(1 - s * s);
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
        f = w - u - i0 * (xu + xw);
        fMu = wMu - uMu + i0 * (ru * xu + r * xw) / x;
        fI = (wTurn - uTurn) * turn - xu - xw;
        g = t + xt * (u + i0 * xu) - i0;
        gMu = tMu + xt * (rt / x * (u + i0 * xu) + uMu - i0 * ru / x * xu);
        gI = (tTurn + xt * uTurn) * turn + xt * xu - 1;
    }

    private double determinant() {
        return fMu * gI - fI * gMu;
    }

    /** {@return Newton's step of the overlap, rad} */
    double stepMu() {
        return (g * fI - f * gI) / determinant();
    }

    /** {@return Newton's step of the current, A} */
    double stepI() {
        return (f * gMu - g * fMu) / determinant();
    }

    /** {@return f, A} */
    double f() {
        return f;
    }

    /** {@return ∂f/∂μ, A/rad} */
    double fMu() {
        return fMu;
    }

    /** {@return ∂f/∂I0} */
    double fI() {
        return fI;
    }

    /** {@return g, A} */
    double g() {
        return g;
    }

    /** {@return ∂g/∂μ, A/rad} */
    double gMu() {
        return gMu;
    }

    /** {@return ∂g/∂I0} */
    double gI() {
        return gI;
    }
}
