package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.hydraulics.LowerEnd;
import org.leat.hydraulics.NozzleOpening;
import org.leat.hydraulics.UpperEnd;
import org.leat.law.Gravity;
import org.leat.lazy.Once;
import org.leat.lazy.OncePerKey;
import org.leat.plant.cases.Closing.Cause;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.plant.solve.PartedStop;
import org.leat.plant.solve.Rejoining;
import org.leat.plant.solve.SurgeRun;
import org.leat.plant.solve.WaterSolver;
import org.leat.plant.solved.WaterSide;
import org.leat.plant.solved.WaterSide.Jet;
import org.leat.plant.solved.WaterSide.NodePressure;

/** The penstock with its water stopped: standing, and in the moment of stopping. */
final class ClosingSolver {

    private final PlantNumbers numbers;
    private final double weight;
    private final OncePerKey<PartedStop, Rejoining> partedStops;

    /** @param partedStops followed before */
    ClosingSolver(PlantNumbers numbers, OncePerKey<PartedStop, Rejoining> partedStops) {
        this.numbers = numbers;
        this.partedStops = partedStops;
        this.weight = WaterNumbers.at(numbers.site().lowestWaterTemperature()).density() * Gravity.STANDARD;
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
        return Objects.equals(section, numbers.penstock().last()) ? Math.min(0, lowest) : lowest;
    }

    private double standing(double elevation) {
        return weight * (numbers.site().grossHead() - elevation);
    }

    /** {@return the flow of a running set stopped in each way the design knows} */
    List<Closing> closing(Running running) {
        List<Closing> cases = new ArrayList<>();
        WaterSide water =
                running.water().fullPipe() ? running.water() : new WaterSolver(numbers).full(running.nozzles());
        Once<SurgeRun> waves = new Once<>(() -> new SurgeRun(numbers, water, weight));
        NozzleGroup nozzles = running.nozzles();
        double full = water.flow();
        ValveStop valve = ValveStop.worst(numbers, water, critical());
        if (valve != null) {
            cases.add(atNozzles(nozzles, Cause.VALVE, valve, full, waves));
        }
        double one = 0;
        double largest = 0;
        for (Jet jet : water.jets()) {
            one = Math.max(one, jet.flow());
            largest = Math.max(largest, jet.bore());
        }
        double left = Math.max(0, 1 - Math.PI / 4 * largest * largest / nozzles.area());
        ValveNumbers shutOff = numbers.nozzles().shutOff();
        if (shutOff != null) {
            ValveStop stop = ValveStop.nozzle(numbers, water, shutOff, one, left, critical());
            cases.add(atNozzles(nozzles, Cause.NOZZLE_SHUT, stop, one, waves));
        }
        cases.add(atNozzles(nozzles, Cause.NOZZLE_PLUGGED, ValveStop.atOnce(left), one, waves));
        OptionalDouble inlet = numbers.penstock().inletClosingTime();
        Boolean vent = numbers.penstock().ventBelowValve();
        if (inlet.isPresent()) {
            ValveStop stop = ValveStop.inlet(numbers, water, inlet.getAsDouble(), critical());
            cases.add(atIntake(nozzles, Cause.INLET_SHUT, stop, Boolean.TRUE.equals(vent), waves));
        }
        cases.add(atIntake(nozzles, Cause.SCREEN_BLOCKED, ValveStop.atOnce(0), vent != null, waves));
        return cases;
    }

    private Closing atNozzles(NozzleGroup nozzles, Cause cause, ValveStop stop, double stopped, Once<SurgeRun> waves) {
        double change = stopped / numbers.penstock().last().area();
        if (!(critical() instanceof Amount.Known critical)) {
            Amount unknown = critical();
            return new Closing(
                    nozzles, cause, stop, unknown, change, unknown, everywhere(unknown), false, null, null, false);
        }
        List<Double> rises = waves.get().firstPass(stopped);
        double fastest = Collections.max(rises);
        double momentum = 0;
        for (SectionNumbers section : numbers.penstock().sections()) {
            momentum += section.length() * stopped / section.area();
        }
        double effective = stop.effectiveTime();
        boolean slow = effective > critical.value();
        double slowly = Math.min(fastest, 2 * momentum / (Gravity.STANDARD * effective));
        double surge = slow ? slowly : rises.get(rises.size() - 1);
        double whole = numbers.penstock().length();
        double along = 0;
        List<Amount> highest = new ArrayList<>();
        for (int i = 0; i < rises.size(); i++) {
            SectionNumbers section = numbers.penstock().sections().get(i);
            along += section.length();
            double rise = slow ? slowly * along / whole : rises.get(i);
            highest.add(Amount.of(standing(lowest(section)) + weight * rise));
        }
        boolean bounds = highest.size() == 1 && (!slow || stop.followedByFlow(fastest));
        return new Closing(
                nozzles,
                cause,
                stop,
                critical,
                change,
                Amount.of(surge),
                highest,
                bounds,
                new Once<>(() -> {
                    double time = waves.get().followed(stop.time());
                    return waves.get().atNozzles(new LowerEnd.Nozzles(stop.opening(time)), time);
                }),
                new Once<>(() -> partedStops.get(
                        waves.get().parted(stop.opening(waves.get().followedToParting(stop.time())), stopped))),
                damped() && waves.get().wholeBefore());
    }

    /** Whether the wall damps later blows more than friction does: most of the line is polyethylene. */
    private boolean damped() {
        double length = 0;
        for (SectionNumbers section : numbers.penstock().sections()) {
            PipeMaterial material = section.material();
            length += material == PipeMaterial.PE80 || material == PipeMaterial.PE100 ? section.length() : 0;
        }
        return length > numbers.penstock().length() / 2;
    }

    /** Shut at the top, the pressure rises nowhere above the standing one as long as the column holds. */
    private Closing atIntake(NozzleGroup nozzles, Cause cause, ValveStop stop, boolean vented, Once<SurgeRun> waves) {
        Amount critical = critical();
        List<Amount> highest = new ArrayList<>();
        for (SectionNumbers section : numbers.penstock().sections()) {
            highest.add(Amount.of(standing(lowest(section))));
        }
        LowerEnd open = new LowerEnd.Nozzles(NozzleOpening.unchanged());
        return new Closing(
                nozzles,
                cause,
                stop,
                critical,
                0,
                Amount.of(0),
                highest,
                true,
                !critical.isKnown()
                        ? null
                        : new Once<>(() -> {
                            double time = waves.get().followed(stop.effectiveTime());
                            UpperEnd upper = vented ? new UpperEnd.ShuttingVented(time) : new UpperEnd.Shutting(time);
                            return waves.get().atIntake(upper, open, time);
                        }),
                null,
                false);
    }

    /** 2 L/a of the whole penstock, s; unknown where a wave speed is. */
    private Amount critical() {
        double critical = 0;
        for (SectionNumbers section : numbers.penstock().sections()) {
            if (!(section.waveSpeed() instanceof Amount.Known speed)) {
                return section.waveSpeed();
            }
            critical += 2 * section.length() / speed.value();
        }
        return Amount.of(critical);
    }

    private List<Amount> everywhere(Amount reason) {
        return Collections.nCopies(numbers.penstock().sections().size(), reason);
    }
}
