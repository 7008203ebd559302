package org.leat.electrics;

import org.jspecify.annotations.Nullable;

/**
 * Whole steps of a bridge on a battery for as long as no diode switches, see {@link Conduction}. The step in which one switches is left
 * to {@link BridgeTimeStepper}.
 */
final class WholeSteps {

    private static final int RAILS = 3;

    private final Sines sines;
    private final double emf;
    private final double step;
    private final DcLoad.Battery battery;

    /** By the rails that the phases lie on, each worked out when first met. */
    private final @Nullable Conduction[] known = new Conduction[RAILS * RAILS * RAILS];

    /**
     * @param emf peak of a phase, V
     * @param step s
     */
    WholeSteps(Sines sines, double emf, double step, DcLoad.Battery battery) {
        this.sines = sines;
        this.emf = emf;
        this.step = step;
        this.battery = battery;
    }

    private Conduction conduction(PhaseSet phases) {
        int which = phases.rail(0) + 1 + RAILS * (phases.rail(1) + 1 + RAILS * (phases.rail(2) + 1));
        Conduction conduction = known[which];
        if (conduction == null) {
            conduction = new Conduction(phases, step, battery);
            known[which] = conduction;
        }
        return conduction;
    }

    /**
     * {@return how many steps were taken: until a diode switches in the next, and no more than asked}
     *
     * @param direct current at the beginning, A
     * @param begun whole steps begun before
     * @param airGap sums what passes it; null where nobody asks
     */
    int run(PhaseSet phases, double direct, long begun, int most, @Nullable AirGapEnergy airGap) {
        Conduction now = conduction(phases);
        int at = (int) (begun % sines.whole().length);
        return now.count < 2 ? idle(phases, at, most, airGap) : flowing(phases, now, direct, at, most, airGap);
    }

    /** No current flows until the EMFs of two phases leave the rails. */
    private int idle(PhaseSet phases, int from, int most, @Nullable AirGapEnergy airGap) {
        double[] sine = sines.whole();
        int at = from;
        int taken = 0;
        double rail = battery.voltage();
        while (taken < most) {
            double a = emf * sine[at];
            double b = emf * sine[sines.third(at)];
            if (phases.wouldSwitchOn(a, b, -a - b, rail)) {
                break;
            }
            at = at + 1 < sine.length ? at + 1 : 0;
            taken++;
        }
        if (airGap != null) {
            airGap.time += taken * step;
        }
        return taken;
    }

    /** The loop in which nearly all the time of a run goes: every number at hand, for the compiler of a short run. */
    private int flowing(
            PhaseSet phases, Conduction now, double current, int from, int most, @Nullable AirGapEnergy airGap) {
        double[] sine = sines.whole();
        double[] between = sines.between();
        int kept = sine.length;
        double amplitude = emf;
        double alpha = battery.voltage();
        double beta = battery.resistance();
        double threshold = phases.threshold();
        double above = now.free >= 0 && phases.allowed(now.free, 1) ? threshold : Double.POSITIVE_INFINITY;
        double below = now.free >= 0 && phases.allowed(now.free, -1) ? -threshold : Double.NEGATIVE_INFINITY;
        double freeA = now.freeFromA;
        double freeB = now.freeFromB;
        double freeConstant = now.freeConstant;
        double freeRail = now.freeFromRail;
        double going = now.kept;
        double directGoing = now.directKept;
        double directA = now.directFromA;
        double directB = now.directFromB;
        double directConstant = now.directConstant;
        double a0 = now.fromA[0];
        double a1 = now.fromA[1];
        double a2 = now.fromA[2];
        double b0 = now.fromB[0];
        double b1 = now.fromB[1];
        double b2 = now.fromB[2];
        double k0 = now.constant[0];
        double k1 = now.constant[1];
        double k2 = now.constant[2];
        double y0 = now.yielding[0];
        double y1 = now.yielding[1];
        double y2 = now.yielding[2];
        double way0 = phases.heldWay(0);
        double way1 = phases.heldWay(1);
        double way2 = phases.heldWay(2);
        double i0 = phases.current(0);
        double i1 = phases.current(1);
        double i2 = phases.current(2);
        double direct = current;
        int at = from;
        int behind = sines.third(from);
        double emfA = amplitude * sine[at];
        double emfB = amplitude * sine[behind];
        double energy = 0;
        int taken = 0;
        while (taken < most) {
            double rail = alpha + beta * direct;
            double potential = freeA * emfA + freeB * emfB + freeConstant + freeRail * rail;
            if (potential > rail + above || potential < below) {
                break;
            }
            int next = at + 1 < kept ? at + 1 : 0;
            int nextBehind = behind + 1 < kept ? behind + 1 : 0;
            double endA = amplitude * sine[next];
            double endB = amplitude * sine[nextBehind];
            double sumA = emfA + endA;
            double sumB = emfB + endB;
            double then = directGoing * direct + (directA * sumA + directB * sumB + directConstant);
            double both = direct + then;
            double n0 = going * i0 + (a0 * sumA + b0 * sumB + k0 - y0 * both);
            double n1 = going * i1 + (a1 * sumA + b1 * sumB + k1 - y1 * both);
            double n2 = going * i2 + (a2 * sumA + b2 * sumB + k2 - y2 * both);
            if (n0 * way0 < 0 || n1 * way1 < 0 || n2 * way2 < 0) {
                break;
            }
            if (airGap != null) {
                double middleA = between[next];
                double middleB = between[nextBehind];
                double middleC = -middleA - middleB;
                energy += middleA * (i0 + n0) + middleB * (i1 + n1) + middleC * (i2 + n2);
            }
            i0 = n0;
            i1 = n1;
            i2 = n2;
            direct = then;
            emfA = endA;
            emfB = endB;
            at = next;
            behind = nextBehind;
            taken++;
        }
        if (airGap != null) {
            airGap.time += taken * step;
            airGap.energy += energy * 0.5 * amplitude * step;
        }
        phases.flow(i0, i1, i2);
        return taken;
    }
}
