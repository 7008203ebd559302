package org.leat.plant.solve;

import java.util.List;
import org.leat.plant.solved.WaterSide;
import org.leat.plant.solved.WaterSide.Jet;
import org.leat.plant.solved.WaterSide.NodePressure;
import org.leat.plant.solved.WaterSide.SectionFlow;

/** See {@link WaterSide}. */
record SolvedWater(
        double flow,
        double grossHead,
        double netHead,
        double screenLoss,
        Filling filling,
        JetSum jetSum,
        List<SectionFlow> sections,
        List<NodePressure> nodes,
        List<Jet> jets)
        implements WaterSide {
    SolvedWater {
        sections = List.copyOf(sections);
        nodes = List.copyOf(nodes);
        jets = List.copyOf(jets);
    }
}
