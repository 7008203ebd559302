package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * The most jet power a penstock can carry: {@code P = ρ g Q Cv² (Hg - h(Q))}, h the head lost to the manifold, is greatest
 * where {@code h + Q dh/dQ = Hg}. With constant friction factor that is a loss of one third of the gross head; as f falls
 * with flow, a little more (one half
 * in laminar flow). Larger nozzles than the best pass more water for less power. Source: Munson et al.,
 * Fundamentals of Fluid Mechanics, 8th ed., problem 12.56.
 *
 * @param flow m³/s
 * @param frictionShare head lost over gross head
 * @param jetPower W; with nozzles on the manifold itself
 * @param conductance of the nozzles that bring it about, m^2.5/s
 */
public record MaximumJetPower(double flow, double frictionShare, double jetPower, double conductance) {

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** Points looked at before the search: where flow turns turbulent, power may have two summits. */
    private static final int SCAN = 64;

    /** {@return the greatest jet power of a pipe} */
    public static MaximumJetPower of(
            SteadyPenstock penstock, double grossHead, double velocityCoefficient, double density) {
        Physical.positive("grossHead", grossHead);
        double most = penstock.flow(grossHead, Double.POSITIVE_INFINITY);
        double step = most / SCAN;
        double best = step;
        for (int i = 2; i < SCAN; i++) {
            best = carried(penstock, grossHead, i * step) > carried(penstock, grossHead, best) ? i * step : best;
        }
        double low = best - step;
        double high = best + step;
        for (int i = 0; i < 60; i++) {
            double span = GOLDEN * (high - low);
            if (carried(penstock, grossHead, high - span) < carried(penstock, grossHead, low + span)) {
                low = high - span;
            } else {
                high = low + span;
            }
        }
        double flow = (low + high) / 2;
        double loss = penstock.headLoss(flow);
        double head = grossHead - loss;
        double velocity = NozzleDischarge.jetVelocity(velocityCoefficient, head);
        double power = NozzleDischarge.jetPower(density, flow, velocity);
        return new MaximumJetPower(flow, loss / grossHead, power, flow / Math.sqrt(head));
    }

    private static double carried(SteadyPenstock penstock, double grossHead, double flow) {
        return flow * (grossHead - penstock.headLoss(flow));
    }

    /**
     * {@return the bore of each of a number of equal nozzles that give this power, m}
     *
     * @param nozzles how many, at least one
     */
    public double nozzleBore(int nozzles, double velocityCoefficient, double contractionCoefficient) {
        Physical.positive("nozzles", nozzles);
        double discharge = Physical.positive("velocityCoefficient", velocityCoefficient)
                * Physical.positive("contractionCoefficient", contractionCoefficient);
        double area = conductance / nozzles / (discharge * Math.sqrt(2 * Gravity.STANDARD));
        return Math.sqrt(4 / Math.PI * area);
    }

    /** {@return whether a flow lies past the maximum: a smaller nozzle would give more power with less water} */
    public boolean isPassedBy(double actualFlow) {
        return actualFlow > flow;
    }

    /**
     * {@return best bore of one nozzle for constant f and Cv = 1: {@code d = D / (2 f L/D)^(1/4)}, m} Munson et al., problem
     * 12.56.
     */
    public static double boreForConstantFriction(double frictionFactor, double length, double bore) {
        double slenderness = Physical.positive("length", length) / Physical.positive("bore", bore);
        return bore / Math.pow(2 * Physical.positive("frictionFactor", frictionFactor) * slenderness, 0.25);
    }
}
