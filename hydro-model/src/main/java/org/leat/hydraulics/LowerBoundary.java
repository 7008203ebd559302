package org.leat.hydraulics;

/** Flow at the lower end of a line, step by step: what arrives along C+ against what the nozzles let through. */
final class LowerBoundary {

    /** open share at each step for nozzles, share of the flow left for a prescribed flow. */
    private final double[] share;

    private final boolean prescribed;
    private final double steadyFlow;
    private final double workingHead;
    private boolean airEntered;

    LowerBoundary(LowerEnd end, double steadyFlow, double workingHead, double timeStep, int steps) {
        this.steadyFlow = steadyFlow;
        this.workingHead = workingHead;
        prescribed = end instanceof LowerEnd.FallingFlow;
        share = new double[steps + 1];
        for (int step = 0; step <= steps; step++) {
            share[step] = share(end, step * timeStep);
        }
    }

    private static double share(LowerEnd end, double time) {
        if (end instanceof LowerEnd.Nozzles nozzles) {
            return nozzles.opening().at(time);
        }
        if (end instanceof LowerEnd.FallingFlow falling) {
            return left(time, falling.time());
        }
        return 1 - left(time, ((LowerEnd.OpeningNozzles) end).time());
    }

    /** Share left of a flow that falls linearly to nothing. */
    static double left(double time, double closingTime) {
        return time <= 0 ? 1 : closingTime <= time ? 0 : 1 - time / closingTime;
    }

    /** Q with {@code H = CP − B Q} and {@code Q = τ Q0 √(H/H0)}; where no head is left, H is 0 and air comes in. */
    double flow(int step, double arriving, double impedance) {
        double full = share[step] * steadyFlow;
        if (prescribed || full == 0) {
            return full;
        }
        if (arriving < 0) {
            airEntered = true;
            return arriving / impedance;
        }
        double c = full * full / workingHead;
        double half = c * impedance / 2;
        return arriving == 0 ? 0 : c * arriving / (half + Math.sqrt(half * half + c * arriving));
    }

    boolean airEntered() {
        return airEntered;
    }
}
