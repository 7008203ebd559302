package org.leat.hydraulics;

import java.util.ArrayList;
import java.util.List;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * A full penstock of sections in series from a screen to nozzles: {@code Hg = S Q² + Σ (f L/D + ΣK) V²/(2g) + Hm}, with Hg
 * gross head m, S the screen's loss m/(m³/s)², f from {@link DarcyFriction}, and {@code Hm = (Q/C)²} the total head at the
 * manifold for nozzles of conductance C ({@link OpenNozzles}). The velocity head at the nozzles is part of Hm. Source: the
 * energy equation, any text (White, Fluid Mechanics, 3.7 and 6.10).
 *
 * <p>The right side never falls with Q, so there is one flow for every head. It is found by secants on a log-log plot,
 * where it is nearly a straight line, inside a bracket that is never left; nothing is allocated. Immutable.
 */
public final class SteadyPenstock {

    private static final int MOST_STEPS = 200;
    private static final double CLOSE_ENOUGH = 1e-13;

    private final List<PenstockSection> sections;
    private final double screenLoss;
    private final double fittingsLoss;
    private final double[] reynoldsPerFlow;
    private final double[] relativeRoughness;
    /** Friction loss over f Q², s²/m^5. */
    private final double[] friction;
    /** Fittings' loss over Q², s²/m^5. */
    private final double[] fittings;

    /**
     * @param sections from the intake down, at least one
     * @param screenLoss head lost at the screen over flow squared, m/(m³/s)²; zero without a screen
     * @param kinematicViscosity of the water, m²/s
     */
    public SteadyPenstock(List<PenstockSection> sections, double screenLoss, double kinematicViscosity) {
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("a penstock has at least one section");
        }
        Physical.positive("kinematicViscosity", kinematicViscosity);
        this.sections = List.copyOf(sections);
        this.screenLoss = Physical.notNegative("screenLoss", screenLoss);
        int n = sections.size();
        reynoldsPerFlow = new double[n];
        relativeRoughness = new double[n];
        friction = new double[n];
        fittings = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            PenstockSection s = sections.get(i);
            double velocityHead = 1 / (2 * Gravity.STANDARD * s.area() * s.area());
            reynoldsPerFlow[i] = s.bore() / (s.area() * kinematicViscosity);
            relativeRoughness[i] = s.roughness() / s.bore();
            friction[i] = s.length() / s.bore() * velocityHead;
            fittings[i] = s.lossCoefficient() * velocityHead;
            sum += fittings[i];
        }
        fittingsLoss = sum;
    }

    /** {@return the sections, from the intake down} */
    public List<PenstockSection> sections() {
        return sections;
    }

    /** {@return head lost at the screen at a flow, m} */
    public double screenLoss(double flow) {
        return screenLoss * flow * flow;
    }

    /** {@return head lost from the intake's water level to the manifold at a flow, m} */
    public double headLoss(double flow) {
        return loss(Physical.notNegative("flow", flow), screenLoss + fittingsLoss);
    }

    private double loss(double flow, double quadratic) {
        if (flow == 0) {
            return 0;
        }
        double perFlowSquared = quadratic;
        for (int i = 0; i < friction.length; i++) {
            perFlowSquared += friction[i] * DarcyFriction.solve(reynoldsPerFlow[i] * flow, relativeRoughness[i]);
        }
        return perFlowSquared * flow * flow;
    }

    /**
     * {@return the flow under a gross head, m³/s}
     *
     * @param grossHead m, not below zero
     * @param conductance of the open nozzles, m^2.5/s; zero where all are shut, infinity for a pipe without a nozzle that
     *     ends in the open and has lost all head there
     */
    public double flow(double grossHead, double conductance) {
        Physical.notNegative("grossHead", grossHead);
        if (!(conductance >= 0)) {
            throw new IllegalArgumentException("conductance must not be below zero or NaN: " + conductance);
        }
        if (grossHead == 0 || conductance == 0) {
            return 0;
        }
        double quadratic = screenLoss + fittingsLoss + 1 / (conductance * conductance);
        double assumed = quadratic;
        for (double each : friction) {
            assumed += 0.02 * each;
        }
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        double flow = Math.sqrt(grossHead / assumed);
        double loss = loss(flow, quadratic);
        double exponent = 1.9;
        for (int step = 0; step < MOST_STEPS && Math.abs(loss - grossHead) > CLOSE_ENOUGH * grossHead; step++) {
            if (loss > grossHead) {
                high = flow;
            } else {
                low = flow;
            }
            double next = flow * Math.pow(grossHead / loss, 1 / exponent);
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (next == flow || next == low || next == high) {
                break;
            }
            double nextLoss = loss(next, quadratic);
            double slope = Math.log(nextLoss / loss) / Math.log(next / flow);
            exponent = slope >= 1 && slope <= 4 ? slope : 1.9;
            flow = next;
            loss = nextLoss;
        }
        return flow;
    }

    /** {@return what happens in each section at a flow} */
    public List<SectionState> states(double flow) {
        List<SectionState> states = new ArrayList<>(friction.length);
        for (int i = 0; i < friction.length; i++) {
            states.add(state(i, flow, 1));
        }
        return states;
    }

    /**
     * {@return what happens in one section at a flow}
     *
     * @param filledShare share of its length that water fills, 0 to 1; fittings are taken to be spread evenly
     */
    SectionState state(int section, double flow, double filledShare) {
        double velocity = flow / sections.get(section).area();
        double reynolds = reynoldsPerFlow[section] * flow;
        double f = flow > 0 ? DarcyFriction.solve(reynolds, relativeRoughness[section]) : 0;
        double square = flow * flow * filledShare;
        return new SectionState(velocity, reynolds, f, friction[section] * f * square, fittings[section] * square);
    }

    /**
     * {@return the whole answer under a gross head}
     *
     * @param grossHead intake water level to nozzle axis, m
     * @param density of the water, kg/m³
     */
    public SteadyFlow solve(double grossHead, OpenNozzles nozzles, double density) {
        double conductance = nozzles.conductance();
        double flow = flow(grossHead, conductance);
        double manifoldHead = flow > 0 ? flow * flow / (conductance * conductance) : grossHead;
        return new SteadyFlow(
                flow, grossHead, screenLoss(flow), manifoldHead, states(flow), nozzles.jets(manifoldHead, density));
    }
}
