package org.leat.electrics;

/**
 * What a whole step makes of the currents while the same phases lie on the same rails: the trapezoidal step of {@link PhaseSet} on a
 * battery, with its star point and its rails eliminated. With s = 1 for a phase on the positive rail, else nil, e the sum of a phase's
 * EMF at both ends of the step, r the rise of a diode, and a bar for the mean over the phases that conduct,
 *
 * <pre>
 * (2L/h + R + σβ) D' = (2L/h − R − σβ) D + Σ s (e − ē − 2 (r − r̄)) − 2σα       σ = Σ s (s − s̄)
 * (2L/h + R) i' = (2L/h − R) i + e − ē − 2 (r − r̄) − (s − s̄) (2α + β (D + D'))
 * </pre>
 *
 * <p>D is the direct current, α + βD the positive rail. The EMFs sum to nil, so that of phase c is written as those of a and b. No
 * division is left in a step. Source: circuit equations.
 */
final class Conduction {

    /** How many phases conduct. */
    final int count;

    /** i' = kept·i + fromA·e_a + fromB·e_b + constant − yielding·(D + D'), of each phase. */
    final double kept;

    final double[] fromA = new double[3];
    final double[] fromB = new double[3];
    final double[] constant = new double[3];
    final double[] yielding = new double[3];

    /** The same of the direct current. */
    final double directKept;

    final double directFromA;
    final double directFromB;
    final double directConstant;

    /** The free phase's potential where two conduct: fromA·e_a + fromB·e_b + constant + rail·(α + βD), e at the step's beginning. */
    final double freeFromA;

    final double freeFromB;
    final double freeConstant;
    final double freeFromRail;

    /** The free phase; −1 unless two conduct. */
    final int free;

    /**
     * @param step s
     * @param battery on the d.c. side
     */
    Conduction(PhaseSet phases, double step, DcLoad.Battery battery) {
        count = phases.conducting();
        int on = Math.max(1, count);
        double ups = 0;
        double rises = 0;
        for (int k = 0; k < 3; k++) {
            ups += phases.rail(k) > 0 ? 1 : 0;
            rises += phases.rise(k);
        }
        double stored = 2 * phases.inductance() / step;
        double alpha = battery.voltage();
        double beta = battery.resistance();
        double stiff = stored + phases.resistance();
        double sigma = ups - ups * ups / on;
        double directStiff = stiff + sigma * beta;
        kept = (stored - phases.resistance()) / stiff;
        directKept = (stored - phases.resistance() - sigma * beta) / directStiff;
        double sumA = on(phases, 0) - on(phases, 2);
        double sumB = on(phases, 1) - on(phases, 2);
        double ofA = 0;
        double ofB = 0;
        double of = -2 * sigma * alpha;
        int idle = -1;
        for (int k = 0; k < 3; k++) {
            if (phases.rail(k) == 0) {
                idle = k;
                continue;
            }
            double s = (phases.rail(k) > 0 ? 1 : 0) - ups / on;
            double a = (k == 0 ? 1 : k == 2 ? -1 : 0) - sumA / on;
            double b = (k == 1 ? 1 : k == 2 ? -1 : 0) - sumB / on;
            double r = -2 * (phases.rise(k) - rises / on);
            fromA[k] = a / stiff;
            fromB[k] = b / stiff;
            constant[k] = (r - 2 * alpha * s) / stiff;
            yielding[k] = beta * s / stiff;
            if (phases.rail(k) > 0) {
                ofA += a;
                ofB += b;
                of += r;
            }
        }
        directFromA = ofA / directStiff;
        directFromB = ofB / directStiff;
        directConstant = of / directStiff;
        free = count == 2 ? idle : -1;
        freeFromA = free == 0 ? 1.5 : free == 2 ? -1.5 : 0;
        freeFromB = free == 1 ? 1.5 : free == 2 ? -1.5 : 0;
        freeConstant = rises / 2;
        freeFromRail = ups / 2;
    }

    private static double on(PhaseSet phases, int k) {
        return phases.rail(k) == 0 ? 0 : 1;
    }
}
