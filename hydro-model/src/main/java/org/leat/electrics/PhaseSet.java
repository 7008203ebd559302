package org.leat.electrics;

import java.util.Arrays;

/**
 * Three phases and the rail each lies on: +1 positive, −1 negative, 0 free. A shorted positive diode ties phase a to the
 * positive rail for good. Steps by the trapezoidal rule, or by the backward one behind a choke, where the rail's voltage
 * jumps with every diode that switches.
 */
final class PhaseSet {

    private final double inductance;
    private final double resistance;
    private final double threshold;
    private final boolean tied;

    /** Whether phase a may be taken on by a rail; b and c always may. */
    private final boolean upAllowed;

    private final boolean downAllowed;
    private final boolean backward;
    private final int[] rail = new int[3];
    private double[] current = new double[3];

    /** What a trial step leads to; after it is taken, what flowed before. */
    private double[] next = new double[3];

    private final double[] push = new double[3];
    private int ended = -1;

    PhaseSet(double inductance, double resistance, double threshold, BridgeFault fault, boolean backward) {
        this.inductance = inductance;
        this.resistance = resistance;
        this.threshold = threshold;
        this.tied = fault == BridgeFault.DIODE_SHORT;
        this.downAllowed = fault != BridgeFault.PHASE_OPEN;
        this.upAllowed = downAllowed && fault != BridgeFault.DIODE_OPEN;
        this.backward = backward;
        rail[0] = tied ? 1 : 0;
    }

    private boolean tied(int k) {
        return tied && k == 0;
    }

    boolean allowed(int k, int side) {
        return k != 0 || (side > 0 ? upAllowed : downAllowed);
    }

    double rise(int k) {
        return tied(k) ? 0 : threshold * rail[k];
    }

    int conducting() {
        return Math.abs(rail[0]) + Math.abs(rail[1]) + Math.abs(rail[2]);
    }

    /** {@return the rail a phase lies on: 1 positive, −1 negative, 0 none} */
    int rail(int k) {
        return rail[k];
    }

    /** {@return the sign that the current of a phase keeps until its diode lets it go; nil where none does} */
    double heldWay(int k) {
        return tied(k) ? 0 : rail[k];
    }

    double inductance() {
        return inductance;
    }

    double resistance() {
        return resistance;
    }

    double threshold() {
        return threshold;
    }

    /** Sets what flows after steps in which no diode switched. */
    void flow(double a, double b, double c) {
        current[0] = a;
        current[1] = b;
        current[2] = c;
    }

    /** Takes over the state of another set of the same phases. */
    void set(PhaseSet other) {
        System.arraycopy(other.rail, 0, rail, 0, 3);
        System.arraycopy(other.current, 0, current, 0, 3);
        System.arraycopy(other.next, 0, next, 0, 3);
        ended = other.ended;
    }

    /** {@return whether {@link #switchOn} would take on a phase while at most one lies on a rail} */
    boolean wouldSwitchOn(double a, double b, double c, double p) {
        if (rail[0] != 0) {
            return leaves(b - a, p) || leaves(c - a, p);
        }
        double free = p + 2 * threshold;
        double highest = Math.max(b, c);
        double lowest = Math.min(b, c);
        return highest - lowest > free || (upAllowed && a - lowest > free) || (downAllowed && highest - a > free);
    }

    /** Whether a phase at a voltage above one that is tied to the positive rail leaves the rails. */
    private boolean leaves(double above, double p) {
        return above > threshold || p + above < -threshold;
    }

    double current(int k) {
        return current[k];
    }

    /** {@return what flowed before the last step} */
    double before(int k) {
        return next[k];
    }

    double directCurrent() {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            sum += rail[k] > 0 ? current[k] : 0;
        }
        return sum;
    }

    /** Potential of the star point from the phases that conduct. */
    private double star(double a, double b, double c, double p) {
        double sum = 0;
        sum += rail[0] == 0 ? 0 : rise(0) + (rail[0] > 0 ? p : 0) - a;
        sum += rail[1] == 0 ? 0 : rise(1) + (rail[1] > 0 ? p : 0) - b;
        sum += rail[2] == 0 ? 0 : rise(2) + (rail[2] > 0 ? p : 0) - c;
        return sum / conducting();
    }

    /** Takes on the free phases whose EMF leaves the rails. */
    void switchOn(double a, double b, double c, double p) {
        double[] e = push;
        e[0] = a;
        e[1] = b;
        e[2] = c;
        if (conducting() == 0) {
            firstPair(e, p);
        }
        int conducting = conducting();
        for (int k = 0; k < 3 && conducting > 0 && conducting < 3; k++) {
            if (rail[k] == 0) {
                double potential = e[k] + star(a, b, c, p);
                if (potential > p + threshold && allowed(k, 1)) {
                    rail[k] = 1;
                } else if (potential < -threshold && allowed(k, -1)) {
                    rail[k] = -1;
                }
            }
        }
    }

    private void firstPair(double[] e, double p) {
        double best = p + 2 * threshold;
        int up = -1;
        int down = -1;
        for (int j = 0; j < 3; j++) {
            for (int k = 0; k < 3; k++) {
                if (j != k && e[j] - e[k] > best && allowed(j, 1) && allowed(k, -1)) {
                    best = e[j] - e[k];
                    up = j;
                    down = k;
                }
            }
        }
        if (up >= 0) {
            rail[up] = 1;
            rail[down] = -1;
        }
    }

    /** Trial step: EMFs and rail voltage at its beginning, EMFs at its end, and the rail at its end as α + β i_dc. */
    void step(
            double h,
            double a0,
            double b0,
            double c0,
            double p,
            double a1,
            double b1,
            double c1,
            double alpha,
            double beta) {
        int m = conducting();
        if (m < 2) {
            Arrays.fill(next, 0);
            return;
        }
        double star = star(a0, b0, c0, p);
        double keep = (backward ? 1 : 2) * inductance / h;
        double all = 0;
        double upper = 0;
        int ups = 0;
        double[] flowing = current;
        double[] pushed = push;
        for (int k = 0; k < 3; k++) {
            int side = rail[k];
            if (side != 0) {
                double rise = rise(k);
                double e0 = k == 0 ? a0 : k == 1 ? b0 : c0;
                double e1 = k == 0 ? a1 : k == 1 ? b1 : c1;
                double slope = backward ? 0 : e0 + star - rise - (side > 0 ? p : 0) - resistance * flowing[k];
                double pushing = keep * flowing[k] + slope + e1 - rise;
                pushed[k] = pushing;
                all += pushing;
                if (side > 0) {
                    upper += pushing;
                    ups++;
                }
            }
        }
        double stiff = keep + resistance;
        double share = (double) ups * (m - ups) / m;
        double direct = (upper - all * ups / m - share * alpha) / (stiff + share * beta);
        double rails = alpha + beta * direct;
        double starEnd = (ups * rails - all) / m;
        double yielding = 1 / stiff;
        for (int k = 0; k < 3; k++) {
            next[k] = rail[k] == 0 ? 0 : (push[k] + starEnd - (rail[k] > 0 ? rails : 0)) * yielding;
        }
    }

    /** {@return the part of the trial step after which the first current ends; one or more if none does} */
    double partUntilZero() {
        double part = 1;
        int first = -1;
        for (int k = 0; k < 3; k++) {
            if (rail[k] != 0 && !tied(k) && next[k] * rail[k] < 0) {
                double here = current[k] / (current[k] - next[k]);
                if (first < 0 || here < part) {
                    part = here;
                    first = k;
                }
            }
        }
        if (first >= 0) {
            ended = first;
        }
        return first < 0 ? 1 : Math.min(part, 0.999999);
    }

    /** Takes the trial step and lets go the phase whose current ended in it. */
    void accept() {
        double[] before = current;
        current = next;
        next = before;
        if (ended >= 0) {
            release(ended);
            ended = -1;
        }
    }

    private void release(int k) {
        rail[k] = 0;
        current[k] = 0;
        int others = conducting();
        if (others == 2) {
            int i = (k + 1) % 3;
            int j = (k + 2) % 3;
            double half = 0.5 * (current[i] - current[j]);
            current[i] = half;
            current[j] = -half;
        } else {
            for (int n = 0; n < 3; n++) {
                current[n] = 0;
                rail[n] = tied(n) ? 1 : 0;
            }
        }
    }
}
