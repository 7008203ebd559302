package org.leat.plant.solve;

import java.util.List;

/**
 * Water from the intake to the jets, steady.
 *
 * @param flow m³/s
 * @param grossHead intake water level to nozzle axis, m
 * @param netHead total head just upstream of the nozzles, after branches, m; mean weighted by flow
 * @param frictionShare head lost on the way over gross head; one less netHead over grossHead
 * @param fullPipe whether the stream brings enough to keep the pipe full
 * @param fullPipeFlow what the nozzles would pass with the pipe full, m³/s
 * @param airLength length of pipe from the intake that is not full, m; zero with a full pipe
 * @param screenLoss head lost at the screen, m
 * @param sections what happens in each section, in order
 * @param nodes pressure from the intake down: one at the top and one at each section's end
 * @param jets one for each open nozzle, in the set's order
 * @param jetVelocity mean of the jets weighted by flow, m/s
 * @param jetPower of all jets, W
 */
public record WaterSide(
        double flow,
        double grossHead,
        double netHead,
        double frictionShare,
        boolean fullPipe,
        double fullPipeFlow,
        double airLength,
        double screenLoss,
        List<SectionFlow> sections,
        List<NodePressure> nodes,
        List<Jet> jets,
        double jetVelocity,
        double jetPower) {
    public WaterSide {
        sections = List.copyOf(sections);
        nodes = List.copyOf(nodes);
        jets = List.copyOf(jets);
    }
}
