package org.leat.pack.penstock;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Spot;
import org.leat.pack.kit.PipeSizes;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.WaterSide.NodePressure;

/**
 * The point below the pipe's mouth with the lowest pressure of all sets that run. The mouth itself is a matter of how deep it
 * lies.
 *
 * @param node the number of sections above the point
 * @param point where
 * @param running the set that runs when the pressure is least
 */
record LowestPoint(int node, NodePressure point, Running running) {

    /** {@return the point} Open where the plant could not be solved, or the top of the pipe is not stated. */
    static LowestPoint of(Judgement j) {
        List<Running> all = j.solved().running();
        String top = PipeSizes.path(j.design(), 0);
        j.at(top)
                .given(
                        top + "/from-elevation",
                        j.design().penstock().sections().get(0).fromElevation());
        List<LowestPoint> points = new ArrayList<>();
        for (Running running : all) {
            List<NodePressure> nodes = running.water().nodes();
            for (int i = 1; i < nodes.size(); i++) {
                points.add(new LowestPoint(i, nodes.get(i), running));
            }
        }
        return Worst.least(points, lowest -> lowest.point().pressure());
    }

    /** {@return the place to answer for: the section that ends at the point} */
    Spot spot(Judgement j) {
        return j.at(PipeSizes.path(j.design(), node - 1)).during(running).with("place", point.at());
    }
}
