package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Surge in a line of sections by the method of characteristics on a grid with {@code dt = dx/a} (Courant number 1), with steady
 * friction: along C+ {@code Hp = CP − B Qp}, {@code CP = H + B Q − R Q|Q|} at the node upstream one step ago, along C−
 * {@code Hp = CM + B Qp}; {@code B = a/(g A)}, {@code R = f dx/(2 g D A²)}. H is head above the nozzle axis [m], Q flow towards the
 * nozzles [m³/s].
 *
 * <p>Source: Wylie and Streeter, Fluid Transients in Systems, ch. 3. First-order in the step through the friction term, exact
 * without friction. The state kept is what arrives at each node, CP and CM, as H = (CP + CM)/2 and Q = (CP − CM)/(2 B). Left out: velocity head, creep of plastic walls (the first peak holds within 10 %, later swings are too
 * large: Covas et al. 2004), unsteady friction, and the vapour pocket where {@link HeadEnvelope#lowestPressureHead} falls below
 * the vapour head: from there on the answer is void.
 */
public final class Characteristics {

    private final ReachGrid grid;
    private final LowerBoundary lower;
    private final UpperEnd upperEnd;
    private final double tankHead;
    private final double upperElevation;
    private final double steadyFlow;
    private final int steps;

    /** CP and CM arriving at each node at the current step, m. */
    private final double[] down;

    private final double[] up;

    /** What leaves the upper and the lower node of each section at the current step, m. */
    private final double[] intoTop;

    private final double[] intoBottom;

    private final double[] highest;
    private final double[] lowest;

    private Characteristics(
            SurgeLine line, double steadyFlow, UpperEnd upperEnd, LowerEnd lowerEnd, int reaches, double duration) {
        grid = new ReachGrid(line.sections(), reaches);
        steps = stepsIn(duration);
        this.upperEnd = upperEnd;
        this.steadyFlow = steadyFlow;
        tankHead = line.tankHead();
        upperElevation = line.sections().get(0).fromElevation();
        lower = new LowerBoundary(lowerEnd, steadyFlow, line.workingHead(steadyFlow), grid.timeStep, steps);
        down = new double[grid.nodes()];
        up = new double[grid.nodes()];
        intoTop = new double[grid.impedance.length];
        intoBottom = new double[grid.impedance.length];
        lowest = new double[grid.nodes()];
        start(lowerEnd instanceof LowerEnd.OpeningNozzles ? 0 : steadyFlow);
        highest = lowest.clone();
    }

    private void start(double q) {
        double h = tankHead;
        for (int i = 0; i < grid.impedance.length; i++) {
            double fall = grid.resistance[i] * q * Math.abs(q);
            double swing = grid.impedance[i] * q;
            for (int j = grid.first[i]; j < grid.first[i + 1]; j++) {
                lowest[j] = h;
                down[j] = h + swing;
                up[j] = h - swing;
                h -= j + 1 < grid.first[i + 1] ? fall : 0;
            }
        }
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
        return runs(line, steadyFlow, upperEnd, lowerEnd, reaches, duration, duration)
                .whole();
    }

    /**
     * One run looked at twice.
     *
     * @param early from the start to an earlier moment: the same as a run of that duration on the same grid
     * @param whole to the end
     */
    public record Runs(HeadEnvelope early, HeadEnvelope whole) {}

    /**
     * {@return the same as {@link #run}, and what it would have been up to an earlier moment}
     *
     * @param early up to the duration, s
     */
    public static Runs runs(
            SurgeLine line,
            double steadyFlow,
            UpperEnd upperEnd,
            LowerEnd lowerEnd,
            int reaches,
            double early,
            double duration) {
        Physical.positive("steadyFlow", steadyFlow);
        Physical.within("reaches", reaches, 1, 100_000);
        Physical.positive("duration", duration);
        Physical.positive("workingHead", line.workingHead(steadyFlow));
        Characteristics run = new Characteristics(line, steadyFlow, upperEnd, lowerEnd, reaches, duration);
        int first = early < duration ? run.stepsIn(early) : run.steps;
        for (int step = 1; step <= first; step++) {
            run.advance(step);
        }
        HeadEnvelope before = run.envelope(line);
        for (int step = first + 1; step <= run.steps; step++) {
            run.advance(step);
        }
        return new Runs(before, first < run.steps ? run.envelope(line) : before);
    }

    private int stepsIn(double duration) {
        return (int) Math.floor(duration / grid.timeStep * (1 + 1e-12) + 1e-9);
    }

    private HeadEnvelope envelope(SurgeLine line) {
        return new HeadEnvelope(line.sections(), grid, highest, lowest, lower.airEntered());
    }

    private void advance(int step) {
        int last = grid.impedance.length - 1;
        upper(step);
        for (int i = 0; i < last; i++) {
            joint(i);
        }
        int end = grid.first[last + 1] - 1;
        double q = lower.flow(step, down[end], grid.impedance[last]);
        leaveUp(last, down[end] - grid.impedance[last] * q, q);
        for (int i = 0; i <= last; i++) {
            sweep(
                    down,
                    up,
                    highest,
                    lowest,
                    grid.first[i],
                    grid.first[i + 1] - 1,
                    intoTop[i],
                    intoBottom[i],
                    0.5 / grid.impedance[i],
                    grid.resistance[i]);
        }
    }

    /** Notes the inner nodes of a section and moves both families of waves on by one reach. */
    private static void sweep(
            double[] down,
            double[] up,
            double[] highest,
            double[] lowest,
            int top,
            int bottom,
            double intoTop,
            double intoBottom,
            double admittance,
            double resistance) {
        double arriving = intoTop;
        for (int j = top + 1; j < bottom; j++) {
            double cp = down[j];
            double cm = up[j];
            double q = (cp - cm) * admittance;
            double loss = resistance * q * Math.abs(q);
            double h = 0.5 * (cp + cm);
            down[j] = arriving;
            up[j - 1] = cm + loss;
            arriving = cp - loss;
            if (h > highest[j]) {
                highest[j] = h;
            }
            if (h < lowest[j]) {
                lowest[j] = h;
            }
        }
        down[bottom] = arriving;
        up[bottom - 1] = intoBottom;
    }

    private void upper(int step) {
        double cm = up[0];
        double b = grid.impedance[0];
        double t = step * grid.timeStep;
        if (upperEnd instanceof UpperEnd.Shutting shutting) {
            double q = steadyFlow * LowerBoundary.left(t, shutting.time());
            leaveDown(0, cm + b * q, q);
        } else if (upperEnd instanceof UpperEnd.ShuttingVented vented) {
            double h = cm + b * steadyFlow * LowerBoundary.left(t, vented.time());
            double held = Math.max(h, upperElevation);
            leaveDown(0, held, (held - cm) / b);
        } else {
            leaveDown(0, tankHead, (tankHead - cm) / b);
        }
    }

    /** Equal head and flow on both sides of the joint below section i. */
    private void joint(int i) {
        double cp = down[grid.first[i + 1] - 1];
        double cm = up[grid.first[i + 1]];
        double q = (cp - cm) / (grid.impedance[i] + grid.impedance[i + 1]);
        double h = cp - grid.impedance[i] * q;
        leaveUp(i, h, q);
        leaveDown(i + 1, h, q);
    }

    private void leaveDown(int i, double h, double q) {
        intoTop[i] = h + q * (grid.impedance[i] - grid.resistance[i] * Math.abs(q));
        note(grid.first[i], h);
    }

    private void leaveUp(int i, double h, double q) {
        intoBottom[i] = h - q * (grid.impedance[i] - grid.resistance[i] * Math.abs(q));
        note(grid.first[i + 1] - 1, h);
    }

    private void note(int node, double h) {
        highest[node] = Math.max(highest[node], h);
        lowest[node] = Math.min(lowest[node], h);
    }
}
