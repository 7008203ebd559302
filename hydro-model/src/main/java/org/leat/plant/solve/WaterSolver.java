package org.leat.plant.solve;

import java.util.ArrayList;
import java.util.List;
import org.leat.hydraulics.NozzleJet;
import org.leat.hydraulics.OpenNozzles;
import org.leat.hydraulics.PartFullFlow;
import org.leat.hydraulics.PartFullPenstock;
import org.leat.hydraulics.PenstockSection;
import org.leat.hydraulics.SectionState;
import org.leat.hydraulics.SteadyFlow;
import org.leat.hydraulics.SteadyPenstock;
import org.leat.law.Gravity;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.NozzleNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.solved.WaterSide;
import org.leat.plant.solved.WaterSide.Filling;
import org.leat.plant.solved.WaterSide.Jet;
import org.leat.plant.solved.WaterSide.JetSum;
import org.leat.plant.solved.WaterSide.NodePressure;
import org.leat.plant.solved.WaterSide.SectionFlow;

/** The water of a nozzle set: full pipe where the stream brings enough, else the pipe that fills only in part. */
public final class WaterSolver {

    private final PlantNumbers numbers;
    private final SteadyPenstock penstock;
    private final double[] elevations;
    private final double grossHead;
    private final double density;

    public WaterSolver(PlantNumbers numbers) {
        this.numbers = numbers;
        this.grossHead = numbers.site().grossHead();
        this.density = numbers.water().density();
        List<SectionNumbers> sections = numbers.penstock().sections();
        List<PenstockSection> pipes = new ArrayList<>(sections.size());
        this.elevations = new double[sections.size() + 1];
        elevations[0] = sections.get(0).fromElevation();
        for (int i = 0; i < sections.size(); i++) {
            SectionNumbers s = sections.get(i);
            pipes.add(new PenstockSection(s.length(), s.bore(), s.roughness(), s.lossCoefficient()));
            elevations[i + 1] = s.toElevation();
        }
        this.penstock = new SteadyPenstock(
                pipes, numbers.penstock().screenLoss(), numbers.water().kinematicViscosity());
    }

    /** {@return the water with the pipe full, however much that takes} */
    public WaterSide full(NozzleGroup nozzles) {
        return water(penstock.solve(grossHead, open(nozzles), density));
    }

    /**
     * {@return the water}
     *
     * @param available flow the stream brings, m³/s
     */
    public WaterSide solve(NozzleGroup nozzles, double available) {
        OpenNozzles open = open(nozzles);
        SteadyFlow full = penstock.solve(grossHead, open, density);
        if (available >= full.flow()) {
            return water(full);
        }
        PartFullFlow part = PartFullPenstock.solve(penstock, elevations, grossHead, available, open, density);
        return water(
                part.flow(),
                new Filling(false, full.flow(), part.airLength()),
                part.manifoldHead(),
                part.netHead(),
                part.sections(),
                part.jets(),
                new JetSum(part.jetVelocity(), part.jetPower()));
    }

    private WaterSide water(SteadyFlow full) {
        return water(
                full.flow(),
                new Filling(true, full.flow(), 0),
                full.manifoldHead(),
                full.netHead(),
                full.sections(),
                full.jets(),
                new JetSum(full.jetVelocity(), full.jetPower()));
    }

    private OpenNozzles open(NozzleGroup nozzles) {
        NozzleNumbers all = numbers.nozzles();
        return all.branchBore().isEmpty() || all.branchLoss() == 0
                ? OpenNozzles.withoutBranches(nozzles.bores(), all.velocityCoefficient(), all.contractionCoefficient())
                : new OpenNozzles(
                        nozzles.bores(),
                        all.velocityCoefficient(),
                        all.contractionCoefficient(),
                        all.branchBore().getAsDouble(),
                        all.branchLoss());
    }

    private WaterSide water(
            double flow,
            Filling filling,
            double manifoldHead,
            double netHead,
            List<SectionState> states,
            List<NozzleJet> nozzleJets,
            JetSum jetSum) {
        List<Jet> jets = new ArrayList<>(nozzleJets.size());
        for (NozzleJet j : nozzleJets) {
            jets.add(new Jet(j.bore(), j.diameter(), j.flow(), j.head(), j.velocity(), j.power()));
        }
        List<SectionFlow> sections = new ArrayList<>(states.size());
        for (int i = 0; i < states.size(); i++) {
            SectionState s = states.get(i);
            sections.add(new SectionFlow(
                    numbers.penstock().sections().get(i).name(),
                    s.velocity(),
                    s.reynolds(),
                    s.frictionFactor(),
                    s.frictionLoss(),
                    s.fittingsLoss()));
        }
        return new SolvedWater(
                flow,
                grossHead,
                netHead,
                penstock.screenLoss(flow),
                filling,
                jetSum,
                sections,
                nodes(manifoldHead, states, filling.airLength()),
                jets);
    }

    /** Pressures from the manifold up, so that they hold for a pipe that is not full too: above the surface there is air. */
    private List<NodePressure> nodes(double manifoldHead, List<SectionState> states, double airLength) {
        List<SectionNumbers> sections = numbers.penstock().sections();
        NodePressure[] nodes = new NodePressure[sections.size() + 1];
        double head = manifoldHead;
        double distance = numbers.penstock().length();
        for (int i = sections.size(); i >= 0; i--) {
            double below = i < states.size() ? states.get(i).velocity() : 0;
            double above = i > 0 ? states.get(i - 1).velocity() : 0;
            double velocity = Math.max(below, above);
            double pressure = density * (Gravity.STANDARD * (head - elevations[i]) - velocity * velocity / 2);
            String at = i == 0 ? "intake" : sections.get(i - 1).name();
            nodes[i] = new NodePressure(at, distance, elevations[i], distance < airLength ? 0 : pressure);
            if (i > 0) {
                head += states.get(i - 1).loss();
                distance = Math.max(0, distance - sections.get(i - 1).length());
            }
        }
        return List.of(nodes);
    }
}
