package org.leat.plant;

import java.util.ArrayList;
import java.util.List;
import org.leat.hydraulics.Joukowsky;
import org.leat.law.Gravity;
import org.leat.plant.Closing.Cause;

/** The penstock with its water stopped: standing, and in the moment of stopping by the closed form. */
final class StandingWater {

    private final PlantNumbers numbers;
    private final double weight;

    StandingWater(PlantNumbers numbers) {
        this.numbers = numbers;
        this.weight = Water.at(numbers.site().lowestWaterTemperature()).density() * Gravity.STANDARD;
    }

    Shut shut() {
        List<SectionNumbers> sections = numbers.penstock().sections();
        List<NodePressure> nodes = new ArrayList<>();
        List<Double> highest = new ArrayList<>();
        SectionNumbers first = sections.get(0);
        nodes.add(new NodePressure("intake", 0, first.fromElevation(), standing(first.fromElevation())));
        double distance = 0;
        for (SectionNumbers section : sections) {
            distance += section.length();
            nodes.add(
                    new NodePressure(section.name(), distance, section.toElevation(), standing(section.toElevation())));
            highest.add(standing(lowest(section)));
        }
        return new Shut(nodes, highest);
    }

    /** The last section ends at the nozzles, whatever it states: its lowest point is at the nozzle axis or below. */
    private double lowest(SectionNumbers section) {
        double lowest = section.lowestElevation();
        return section.equals(numbers.penstock().last()) ? Math.min(0, lowest) : lowest;
    }

    private double standing(double elevation) {
        return weight * (numbers.site().grossHead() - elevation);
    }

    /** {@return the flow of a running set stopped in each way the design knows} */
    List<Closing> closing(Running running) {
        List<Closing> cases = new ArrayList<>();
        double valve = Double.POSITIVE_INFINITY;
        for (SectionNumbers section : numbers.penstock().sections()) {
            Double time = section.closingTime();
            valve = time == null ? valve : Math.min(valve, time);
        }
        double full = running.water().fullPipeFlow();
        if (valve < Double.POSITIVE_INFINITY) {
            cases.add(stop(running.nozzles(), Cause.VALVE, valve, full));
        }
        double greatest = 0;
        double all = 0;
        for (Jet jet : running.water().jets()) {
            greatest = Math.max(greatest, jet.flow());
            all += jet.flow();
        }
        double one = all > 0 ? full * greatest / all : 0;
        Double needle = numbers.nozzles().shutOffTime();
        if (needle != null) {
            cases.add(stop(running.nozzles(), Cause.NOZZLE_SHUT, needle, one));
        }
        cases.add(stop(running.nozzles(), Cause.NOZZLE_PLUGGED, 0, one));
        return cases;
    }

    private Closing stop(NozzleGroup nozzles, Cause cause, double time, double flowStopped) {
        double critical = 0;
        double fastest = 0;
        double momentum = 0;
        for (SectionNumbers section : numbers.penstock().sections()) {
            if (!(section.waveSpeed() instanceof Amount.Known wave)) {
                return unknown(nozzles, cause, time, flowStopped, section.waveSpeed());
            }
            double velocity = flowStopped / section.area();
            critical += 2 * section.length() / wave.value();
            fastest = Math.max(fastest, Joukowsky.head(wave.value(), velocity));
            momentum += section.length() * velocity;
        }
        boolean slow = time > critical;
        double surge = slow ? Math.min(fastest, 2 * momentum / (Gravity.STANDARD * time)) : fastest;
        double whole = numbers.penstock().length();
        double along = 0;
        List<Amount> highest = new ArrayList<>();
        for (SectionNumbers section : numbers.penstock().sections()) {
            along += section.length();
            double share = slow ? along / whole : 1;
            highest.add(Amount.of(standing(lowest(section)) + weight * surge * share));
        }
        return new Closing(
                nozzles,
                cause,
                time,
                Amount.of(critical),
                flowStopped / numbers.penstock().last().area(),
                Amount.of(surge),
                highest);
    }

    private Closing unknown(NozzleGroup nozzles, Cause cause, double time, double flowStopped, Amount reason) {
        List<Amount> highest = new ArrayList<>();
        for (int i = 0; i < numbers.penstock().sections().size(); i++) {
            highest.add(reason);
        }
        double change = flowStopped / numbers.penstock().last().area();
        return new Closing(nozzles, cause, time, reason, change, reason, highest);
    }
}
