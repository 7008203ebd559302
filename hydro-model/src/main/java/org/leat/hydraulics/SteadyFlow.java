package org.leat.hydraulics;

import java.util.List;

/**
 * Water from the intake to the jets with the pipe full.
 *
 * @param flow m³/s
 * @param grossHead intake water level to nozzle axis, m
 * @param screenLoss head lost at the screen, m
 * @param manifoldHead total head at the pipe's end, before the branches, m
 * @param sections from the intake down
 * @param jets one for each open nozzle
 */
public record SteadyFlow(
        double flow,
        double grossHead,
        double screenLoss,
        double manifoldHead,
        List<SectionState> sections,
        List<NozzleJet> jets) {
    public SteadyFlow {
        sections = List.copyOf(sections);
        jets = List.copyOf(jets);
    }

    /** {@return total head just upstream of the nozzles, m: mean weighted by flow; the gross head where nothing flows} */
    public double netHead() {
        return meanHead(jets, manifoldHead);
    }

    /** {@return head lost on the way over gross head; zero where there is no head} */
    public double frictionShare() {
        return grossHead > 0 ? 1 - netHead() / grossHead : 0;
    }

    /** {@return kinetic power of all jets, W} */
    public double jetPower() {
        return power(jets);
    }

    /** {@return velocity of the jets weighted by flow, m/s; zero where nothing flows} */
    public double jetVelocity() {
        return meanVelocity(jets);
    }

    static double power(List<NozzleJet> jets) {
        double sum = 0;
        for (NozzleJet jet : jets) {
            sum += jet.power();
        }
        return sum;
    }

    static double meanHead(List<NozzleJet> jets, double whereNothingFlows) {
        double sum = 0;
        double flow = 0;
        for (NozzleJet jet : jets) {
            sum += jet.head() * jet.flow();
            flow += jet.flow();
        }
        return flow > 0 ? sum / flow : whereNothingFlows;
    }

    static double meanVelocity(List<NozzleJet> jets) {
        double sum = 0;
        double flow = 0;
        for (NozzleJet jet : jets) {
            sum += jet.velocity() * jet.flow();
            flow += jet.flow();
        }
        return flow > 0 ? sum / flow : 0;
    }
}
