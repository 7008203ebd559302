package org.leat.plant.cases;

import java.util.List;
import org.apiguardian.api.API;
import org.leat.plant.solved.WaterSide.NodePressure;

/**
 * All nozzles shut, the pipe full and standing, the water as cold and heavy as it gets.
 *
 * @param nodes static pressure from the intake down
 * @param sections the highest static pressure in each section, in order, Pa
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Shut(List<NodePressure> nodes, List<Double> sections) implements Situation {
    public Shut {
        nodes = List.copyOf(nodes);
        sections = List.copyOf(sections);
    }

    @Override
    public String id() {
        return "shut";
    }
}
