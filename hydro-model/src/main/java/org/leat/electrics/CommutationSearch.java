package org.leat.electrics;

/**
 * The equations of {@link Commutation} solved by a bracket on I0 around a bracket on μ: slow, never astray. Used where
 * Newton's steps do not settle, and to check them in the tests.
 */
final class CommutationSearch {

    private static final double SIXTH = Math.PI / 3;
    private static final double ROOT3 = Math.sqrt(3);
    private static final int MOST_WIDENINGS = 60;

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
    private CommutationSearch(double e, double x, double r, double v, double rho, double i0) {
        this.e = e;
        this.x = x;
        this.r = r;
        this.v = v;
        this.ru = r + 2 * rho / 3;
        this.rt = r + rho / 2;
        this.sine = Math.min(1, (v + rho * i0) / (3 * e));
        this.cosine = Math.sqrt(1 - sine * sine);
        this.u = Arc.upper(e, sine, cosine, v, ru, x, 0);
        this.w = Arc.difference(e, sine, cosine, r, x, 0);
        this.pair = Arc.pair(e, sine, cosine, v, rt, x, 0);
    }

    /** {@return the currents} Arguments as in {@link ThreeModeBridge}. */
    static BridgeCurrents solve(double e, double x, double r, double v, double rho) {
        CommutationSearch first = new CommutationSearch(e, x, r, v, rho, 0);
        double mu = first.overlap();
        if (rho == 0) {
            return first.currents(first.start(mu), mu);
        }
        double low = 0;
        double atLow = first.start(mu);
        double high = atLow;
        double atHigh = repeated(e, x, r, v, rho, high);
        for (int n = 0; n < MOST_WIDENINGS && atHigh > 0; n++) {
            low = high;
            atLow = atHigh;
            high += 1.1 * atHigh;
            atHigh = repeated(e, x, r, v, rho, high);
        }
        double i0 = IllinoisMethod.between(i -> repeated(e, x, r, v, rho, i), low, atLow, high, atHigh, 1e-10 * high);
        CommutationSearch found = new CommutationSearch(e, x, r, v, rho, i0);
        double overlap = found.overlap();
        return found.currents(found.start(overlap), overlap);
    }

    /** {@return by how much the direct current that repeats exceeds the one that θ1 was worked out with} */
    private static double repeated(double e, double x, double r, double v, double rho, double i0) {
        CommutationSearch trial = new CommutationSearch(e, x, r, v, rho, i0);
        return trial.start(trial.overlap()) - i0;
    }

    /** {@return I0 that repeats after a sixth of a period with this μ} Well conditioned for any R/X. */
    private double start(double mu) {
        double xt = Math.exp(-pair.a() * (SIXTH - mu));
        double settled = pair.s() * (0.5 - Math.cos(mu) * xt) + pair.q() * (ROOT3 / 2 - Math.sin(mu) * xt);
        double repeats = settled + pair.c() * (1 - xt) + xt * u.at(mu);
        return repeats / -Math.expm1(-pair.a() * (SIXTH - mu) - u.a() * mu);
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
        return IllinoisMethod.between(this::rest, low, atLow, high, atHigh, 1e-11);
    }

    /** {@return the currents of a solution} */
    static BridgeCurrents currents(double e, double x, double r, double v, double rho, double i0, double mu) {
        return new CommutationSearch(e, x, r, v, rho, i0).currents(i0, mu);
    }

    private BridgeCurrents currents(double i0, double mu) {
        Arc up = Arc.upper(e, sine, cosine, v, ru, x, i0);
        Arc apart = Arc.difference(e, sine, cosine, r, x, -i0);
        double sin = Math.sin(mu);
        double cos = Math.cos(mu);
        Arc two = Arc.pair(e, sine * cos + cosine * sin, cosine * cos - sine * sin, v, rt, x, up.at(mu));
        double left = SIXTH - mu;
        double squareUp = up.integralOfSquare(mu);
        double squareTwo = two.integralOfSquare(left);
        double phases = 1.5 * squareUp + 0.5 * apart.integralOfSquare(mu) + 2 * squareTwo;
        return BridgeCurrents.of(
                up.integral(mu) + two.integral(left), squareUp + squareTwo, phases, ConductionMode.COMMUTATION);
    }
}
