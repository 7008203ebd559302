package org.leat.hydraulics;

import java.util.ArrayList;
import java.util.List;
import org.leat.law.Physical;

/**
 * A penstock short of water. When the stream brings less than the nozzles would pass with the pipe full, the level falls
 * until they pass just what comes: first in the intake, then in the pipe. Where the surface stands at elevation z, the
 * filled pipe below it carries {@code z = Σ losses below + (Q/C)²}, with C the nozzles' conductance. Above it, water runs
 * down a pipe that is partly air. The energy equation with atmospheric pressure at the surface; the velocity head above it
 * is left out (it is thrown into mixing water and air). Fittings are taken to be spread evenly along their section.
 *
 * <p>The surface is the first place going up from the nozzle where the pipe meets the grade line. Whether water running
 * part-full finds room above is {@link ManningPipe}'s question. Power falls with the cube of the flow.
 */
public final class PartFullPenstock {

    private PartFullPenstock() {}

    /**
     * {@return the state at a flow, with one even slope from the intake's level to the nozzle axis}
     *
     * @param grossHead intake water level to nozzle axis, m
     * @param flow of the stream, m³/s
     */
    public static PartFullFlow evenSlope(
            SteadyPenstock penstock, double grossHead, double flow, OpenNozzles nozzles, double density) {
        return solve(penstock, Elevations.evenSlope(penstock.sections(), grossHead), grossHead, flow, nozzles, density);
    }

    /**
     * {@return the state at a flow}
     *
     * @param elevations of the pipe above the nozzle axis: at its top, then at each section's end, m
     * @param grossHead intake water level to nozzle axis, m
     * @param flow of the stream, m³/s
     * @param density of the water, kg/m³
     * @throws IllegalArgumentException where the flow needs more than the gross head (the pipe stays full: solve that with
     *     {@link SteadyPenstock}), or all nozzles are shut
     */
    public static PartFullFlow solve(
            SteadyPenstock penstock,
            double[] elevations,
            double grossHead,
            double flow,
            OpenNozzles nozzles,
            double density) {
        List<PenstockSection> sections = penstock.sections();
        Elevations.check(sections, elevations);
        double conductance = Physical.positive("conductance", nozzles.conductance());
        double manifoldHead = Physical.notNegative("flow", flow) / conductance;
        manifoldHead *= manifoldHead;
        double needed = manifoldHead + penstock.headLoss(flow);
        if (needed > grossHead * (1 + 1e-9)) {
            throw new IllegalArgumentException("a flow of " + flow + " m³/s keeps the pipe full: it needs " + needed
                    + " m of " + grossHead + " m");
        }
        int n = sections.size();
        double[] share = new double[n];
        double grade = manifoldHead;
        double filled = 0;
        double level = needed;
        boolean inPipe = false;
        for (int i = n - 1; i >= 0 && !inPipe; i--) {
            double up = grade + penstock.state(i, flow, 1).loss();
            double below = elevations[i + 1] - grade;
            double above = elevations[i] - up;
            inPipe = above > 0;
            share[i] = inPipe ? Math.max(0, -below) / (Math.max(0, -below) + above) : 1;
            level = inPipe ? elevations[i + 1] + share[i] * (elevations[i] - elevations[i + 1]) : needed;
            filled += share[i] * sections.get(i).length();
            grade = up;
        }
        double length = 0;
        List<SectionState> states = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            states.add(penstock.state(i, flow, share[i]));
            length += sections.get(i).length();
        }
        List<NozzleJet> jets = nozzles.jets(manifoldHead, density);
        return new PartFullFlow(flow, level, filled, length - filled, inPipe, manifoldHead, states, jets);
    }
}
