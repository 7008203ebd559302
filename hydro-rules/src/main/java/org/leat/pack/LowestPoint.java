package org.leat.pack;

import java.util.List;
import java.util.Objects;
import org.leat.check.Judgement;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.NodePressure;

/**
 * The point below the pipe's mouth with the lowest pressure of all sets that run. The mouth itself is a matter of how deep it
 * lies.
 *
 * @param node the number of sections above the point
 * @param point where
 * @param running the set that runs when the pressure is least
 */
record LowestPoint(int node, NodePressure point, Running running) {

    /** {@return the point; there is a set that runs} */
    static LowestPoint of(Judgement j) {
        LowestPoint lowest = null;
        for (Running running : j.cases().running()) {
            List<NodePressure> nodes = running.water().nodes();
            for (int i = 1; i < nodes.size(); i++) {
                if (lowest == null || nodes.get(i).pressure() < lowest.point().pressure()) {
                    lowest = new LowestPoint(i, nodes.get(i), running);
                }
            }
        }
        return Objects.requireNonNull(lowest);
    }
}
