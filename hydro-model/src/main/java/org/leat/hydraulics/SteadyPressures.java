package org.leat.hydraulics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Pressure above atmosphere at the top of a penstock and at each section's end. Standing water: {@code p = ρ g (Hg - z)}.
 * Running: {@code p = ρ g (Hg - losses so far - V²/(2g) - z)} with V the faster of the two velocities where sections meet.
 * Between nodes pressure runs straight (even slope, fittings spread evenly), so the lowest lies at a node. The energy
 * equation, any text.
 *
 * @param nodes from the intake down
 */
public record SteadyPressures(List<Node> nodes) {

    /**
     * One point.
     *
     * @param distance along the pipe from its top, m
     * @param elevation above the nozzle axis, m
     * @param pressure above atmosphere, Pa
     */
    public record Node(double distance, double elevation, double pressure) {}

    public SteadyPressures {
        nodes = List.copyOf(nodes);
    }

    /** {@return the node of lowest pressure; the uppermost of equals} */
    public Node lowest() {
        return nodes.stream().min(Comparator.comparingDouble(Node::pressure)).orElseThrow();
    }

    /** {@return the node of highest pressure; the uppermost of equals} */
    public Node highest() {
        return nodes.stream().max(Comparator.comparingDouble(Node::pressure)).orElseThrow();
    }

    /**
     * {@return pressure with all nozzles shut}
     *
     * @param elevations above the nozzle axis: at the top, then at each section's end, m
     * @param grossHead intake water level to nozzle axis, m
     * @param density kg/m³
     */
    public static SteadyPressures standing(
            SteadyPenstock penstock, double[] elevations, double grossHead, double density) {
        return running(penstock, elevations, grossHead, 0, density);
    }

    /**
     * {@return pressure with the pipe full and running}
     *
     * @param flow m³/s; what {@link SteadyPenstock#flow} gives
     */
    public static SteadyPressures running(
            SteadyPenstock penstock, double[] elevations, double grossHead, double flow, double density) {
        double total = Physical.finite("grossHead", grossHead) - penstock.screenLoss(flow);
        return along(penstock, elevations, total, penstock.states(Physical.notNegative("flow", flow)), density);
    }

    /** {@return pressure with the pipe partly full: none above the surface, which is open to the air} */
    public static SteadyPressures running(
            SteadyPenstock penstock, double[] elevations, PartFullFlow partFull, double density) {
        double lost = 0;
        for (SectionState state : partFull.sections()) {
            lost += state.loss();
        }
        SteadyPressures full =
                along(penstock, elevations, partFull.manifoldHead() + lost, partFull.sections(), density);
        List<Node> nodes = new ArrayList<>();
        for (Node node : full.nodes()) {
            boolean open = partFull.drawsAir() && node.distance() < partFull.airLength();
            nodes.add(open ? new Node(node.distance(), node.elevation(), 0) : node);
        }
        return new SteadyPressures(nodes);
    }

    private static SteadyPressures along(
            SteadyPenstock penstock, double[] elevations, double totalHead, List<SectionState> states, double density) {
        List<PenstockSection> sections = penstock.sections();
        Elevations.check(sections, elevations);
        double weight = Physical.positive("density", density) * Gravity.STANDARD;
        List<Node> nodes = new ArrayList<>(elevations.length);
        double head = totalHead;
        double distance = 0;
        for (int i = 0; i < elevations.length; i++) {
            double before = i > 0 ? states.get(i - 1).velocity() : 0;
            double after = i < states.size() ? states.get(i).velocity() : 0;
            double velocity = Math.max(before, after);
            double pressure = weight * (head - velocity * velocity / (2 * Gravity.STANDARD) - elevations[i]);
            nodes.add(new Node(distance, elevations[i], pressure));
            if (i < states.size()) {
                head -= states.get(i).loss();
                distance += sections.get(i).length();
            }
        }
        return new SteadyPressures(nodes);
    }
}
