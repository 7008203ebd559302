package org.leat.hydraulics;

import java.util.List;

/**
 * A penstock whose stream brings less than its nozzles would pass.
 *
 * @param flow of the stream into the intake, m³/s
 * @param level elevation of the water surface above the nozzle axis, m: in the pipe, or in the intake above the pipe
 * @param filledLength of pipe from the nozzle up, m
 * @param airLength of pipe from the intake down that is not full, m
 * @param drawsAir whether the surface stands in the pipe, so that air is drawn along and the jet spits
 * @param manifoldHead total head at the pipe's end, before the branches, m
 * @param sections from the intake down; losses are those of the filled length
 * @param jets one for each open nozzle
 */
public record PartFullFlow(
        double flow,
        double level,
        double filledLength,
        double airLength,
        boolean drawsAir,
        double manifoldHead,
        List<SectionState> sections,
        List<NozzleJet> jets) {
    public PartFullFlow {
        sections = List.copyOf(sections);
        jets = List.copyOf(jets);
    }

    /** {@return total head just upstream of the nozzles, m: mean weighted by flow} */
    public double netHead() {
        return SteadyFlow.meanHead(jets, manifoldHead);
    }

    /** {@return kinetic power of all jets, W} Air in the water lowers it further; by how much is not computed. */
    public double jetPower() {
        return SteadyFlow.power(jets);
    }

    /** {@return velocity of the jets weighted by flow, m/s; zero where nothing flows} */
    public double jetVelocity() {
        return SteadyFlow.meanVelocity(jets);
    }
}
