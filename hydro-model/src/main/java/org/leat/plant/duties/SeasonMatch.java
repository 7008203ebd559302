package org.leat.plant.duties;

import java.util.List;
import org.leat.law.Gravity;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;

/**
 * The set on hand that suits one flow best, against a nozzle cut for that flow, but no wider than the widest set on hand:
 * what more a wet season could give is not asked here. By the power of the jets; the pipe's loss is taken to go with the
 * square of the flow.
 *
 * @param flow what the stream has for the plant, m³/s
 * @param set the best set on hand
 * @param share its power over that of the nozzle cut for the flow, at most 1
 * @param bestBore bore of that nozzle in as many positions as are open as built, m
 * @param ideal power of its jets, W
 */
public record SeasonMatch(double flow, NozzleGroup set, double share, double bestBore, double ideal) {

    /** {@return how well the sets on hand suit each flow of the year, most water first; none for a dry stream} */
    public static List<SeasonMatch> all(Cases cases) {
        return cases.numbers().site().stream().stream()
                .filter(level -> level.available() > 0)
                .map(level -> of(cases, level.available()))
                .toList();
    }

    /** {@return how well the sets on hand suit a flow above nil, m³/s} */
    public static SeasonMatch of(Cases cases, double available) {
        PlantNumbers numbers = cases.numbers();
        double head = numbers.site().grossHead();
        double loss = loss(cases);
        double widest = cases.running().stream()
                .mapToDouble(running -> running.water().fullPipeFlow())
                .max()
                .orElseThrow();
        double most = Math.min(available, widest);
        double best = loss > 0 ? Math.min(most, Math.sqrt(head / (3 * loss))) : most;
        double speed = numbers.nozzles().velocityCoefficient();
        double velocity = speed * Math.sqrt(2 * Gravity.STANDARD * (head - loss * best * best));
        double ideal = numbers.water().density() * best * velocity * velocity / 2;
        Running suits = cases.running().get(0);
        double power = -1;
        for (Running running : cases.running()) {
            double jets = power(numbers, running, available);
            if (jets > power) {
                power = jets;
                suits = running;
            }
        }
        int positions = numbers.nozzles().asBuilt().bores().size();
        double area = best / velocity / numbers.nozzles().contractionCoefficient() / positions;
        return new SeasonMatch(
                available, suits.nozzles(), Math.min(1, power / ideal), Math.sqrt(4 / Math.PI * area), ideal);
    }

    private static double power(PlantNumbers numbers, Running running, double available) {
        if (available >= running.water().fullPipeFlow() && running.water().fullPipe()) {
            return running.water().jetPower();
        }
        double passed = Math.min(available, running.water().fullPipeFlow());
        double velocity = passed / (running.nozzles().area() * numbers.nozzles().contractionCoefficient());
        return numbers.water().density() * passed * velocity * velocity / 2;
    }

    /** Head lost over flow squared, from a set that runs with the pipe full; zero where none does. */
    private static double loss(Cases cases) {
        for (Running running : cases.running()) {
            double flow = running.water().flow();
            if (running.water().fullPipe() && flow > 0) {
                return (running.water().grossHead() - running.water().netHead()) / (flow * flow);
            }
        }
        return 0;
    }
}
