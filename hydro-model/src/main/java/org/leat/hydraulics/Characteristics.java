package org.leat.hydraulics;

import java.util.List;
import org.leat.law.Physical;

/**
 * Surge in a line of sections by the method of characteristics on a grid with {@code dt = dx/a} (Courant number 1), with steady
 * friction: along C+ {@code Hp = CP − B Qp}, {@code CP = H + B Q − R Q|Q|} at the node upstream one step ago, along C−
 * {@code Hp = CM + B Qp}; {@code B = a/(g A)}, {@code R = f dx/(2 g D A²)}. H is head above the nozzle axis [m], Q flow towards the
 * nozzles [m³/s].
 *
 * <p>Source: Wylie and Streeter, Fluid Transients in Systems, ch. 3. First-order in the step through the friction term, exact
 * without friction. Left out: velocity head, creep of plastic walls (the first peak holds within 10 %, later swings are too
 * large: Covas et al. 2004), unsteady friction, and the vapour pocket where {@link HeadEnvelope#lowestPressureHead} falls below
 * the vapour head: from there on the answer is void.
 */
public final class Characteristics {

    private final ReachGrid grid;
    private final LowerBoundary lower;
    private final UpperEnd upperEnd;
    private final double tankHead;
    private final double steadyFlow;
    private final int steps;

    private double[] head;
    private double[] flow;
    private double[] nextHead;
    private double[] nextFlow;
    private final double[] highest;
    private final double[] lowest;

    private Characteristics(
            SurgeLine line, double steadyFlow, UpperEnd upperEnd, LowerEnd lowerEnd, int reaches, double duration) {
        grid = new ReachGrid(line.sections(), reaches);
        steps = (int) Math.floor(duration / grid.timeStep * (1 + 1e-12) + 1e-9);
        this.upperEnd = upperEnd;
        this.steadyFlow = steadyFlow;
        tankHead = line.tankHead();
        lower = new LowerBoundary(lowerEnd, steadyFlow, line.workingHead(steadyFlow), grid.timeStep, steps);
        double start = lowerEnd instanceof LowerEnd.OpeningNozzles ? 0 : steadyFlow;
        head = new double[grid.nodes()];
        flow = new double[grid.nodes()];
        double h = tankHead;
        for (int i = 0; i < grid.impedance.length; i++) {
            for (int j = grid.first[i]; j < grid.first[i + 1]; j++) {
                head[j] = h;
                flow[j] = start;
                h -= j + 1 < grid.first[i + 1] ? grid.resistance[i] * start * Math.abs(start) : 0;
            }
        }
        nextHead = head.clone();
        nextFlow = flow.clone();
        highest = head.clone();
        lowest = head.clone();
    }

    /**
     * {@return the highest and lowest head along the line from the steady start to the end of the duration, both included}
     *
     * @param line sections and tank
     * @param steadyFlow before the change (when opening: after it), m³/s; the head it leaves before the nozzles is above 0
     * @param upperEnd what happens at the tank
     * @param lowerEnd what happens at the nozzles
     * @param reaches wished for the whole line, 1 to 100 000
     * @param duration s
     */
    public static HeadEnvelope run(
            SurgeLine line, double steadyFlow, UpperEnd upperEnd, LowerEnd lowerEnd, int reaches, double duration) {
        Physical.positive("steadyFlow", steadyFlow);
        Physical.within("reaches", reaches, 1, 100_000);
        Physical.positive("duration", duration);
        Physical.positive("workingHead", line.workingHead(steadyFlow));
        Characteristics run = new Characteristics(line, steadyFlow, upperEnd, lowerEnd, reaches, duration);
        for (int step = 1; step <= run.steps; step++) {
            run.advance(step);
        }
        return run.envelope(line.sections());
    }

    private void advance(int step) {
        int last = grid.impedance.length - 1;
        for (int i = 0; i <= last; i++) {
            interior(
                    head,
                    flow,
                    nextHead,
                    nextFlow,
                    highest,
                    lowest,
                    grid.first[i] + 1,
                    grid.first[i + 1] - 1,
                    grid.impedance[i],
                    grid.resistance[i]);
        }
        upper(step);
        for (int i = 0; i < last; i++) {
            joint(i);
        }
        int end = grid.first[last + 1] - 1;
        double q = lower.flow(step, arrivingDown(last), grid.impedance[last]);
        set(end, arrivingDown(last) - grid.impedance[last] * q, q);
        double[] h = head;
        head = nextHead;
        nextHead = h;
        double[] f = flow;
        flow = nextFlow;
        nextFlow = f;
    }

    private static void interior(
            double[] h,
            double[] q,
            double[] nextH,
            double[] nextQ,
            double[] high,
            double[] low,
            int from,
            int to,
            double b,
            double r) {
        double admittance = 0.5 / b;
        for (int j = from; j < to; j++) {
            double above = q[j - 1];
            double below = q[j + 1];
            double cp = h[j - 1] + above * (b - r * Math.abs(above));
            double cm = h[j + 1] - below * (b - r * Math.abs(below));
            double here = 0.5 * (cp + cm);
            nextH[j] = here;
            nextQ[j] = (cp - cm) * admittance;
            high[j] = Math.max(high[j], here);
            low[j] = Math.min(low[j], here);
        }
    }

    private void upper(int step) {
        double cm = arrivingUp(0);
        if (upperEnd instanceof UpperEnd.Shutting shutting) {
            double q = steadyFlow * LowerBoundary.left(step * grid.timeStep, shutting.time());
            set(0, cm + grid.impedance[0] * q, q);
        } else {
            set(0, tankHead, (tankHead - cm) / grid.impedance[0]);
        }
    }

    /** Equal head and flow on both sides of the joint below section i. */
    private void joint(int i) {
        double cp = arrivingDown(i);
        double cm = arrivingUp(i + 1);
        double q = (cp - cm) / (grid.impedance[i] + grid.impedance[i + 1]);
        double h = cp - grid.impedance[i] * q;
        set(grid.first[i + 1] - 1, h, q);
        set(grid.first[i + 1], h, q);
    }

    /** CP that reaches the lower end of section i. */
    private double arrivingDown(int i) {
        int j = grid.first[i + 1] - 2;
        return head[j] + flow[j] * (grid.impedance[i] - grid.resistance[i] * Math.abs(flow[j]));
    }

    /** CM that reaches the upper end of section i. */
    private double arrivingUp(int i) {
        int j = grid.first[i] + 1;
        return head[j] - flow[j] * (grid.impedance[i] - grid.resistance[i] * Math.abs(flow[j]));
    }

    private void set(int node, double h, double q) {
        nextHead[node] = h;
        nextFlow[node] = q;
        highest[node] = Math.max(highest[node], h);
        lowest[node] = Math.min(lowest[node], h);
    }

    private HeadEnvelope envelope(List<SurgeSection> sections) {
        return new HeadEnvelope(sections, grid, highest, lowest, lower.airEntered());
    }
}
