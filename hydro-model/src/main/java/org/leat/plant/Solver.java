package org.leat.plant;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.design.RegulatorKind;
import org.leat.plant.Operation.Tracking;

/** Solves a plant's numbers in each situation. What other numbers share with these is not solved again. */
final class Solver {

    private final PlantNumbers numbers;
    private final Machine machine;
    private final Once<List<WaterSide>> waters;

    private Solver(PlantNumbers numbers, Machine machine, @Nullable Once<List<WaterSide>> waters) {
        this.numbers = numbers;
        this.machine = machine;
        this.waters = waters == null ? new Once<>(this::everyWater) : waters;
    }

    static Solver of(PlantNumbers numbers) {
        return new Solver(numbers, new Machine(numbers), null);
    }

    Solver with(PlantNumbers changed) {
        boolean sameWater = changed.site().equals(numbers.site())
                && changed.water().equals(numbers.water())
                && changed.penstock().equals(numbers.penstock())
                && changed.nozzles().equals(numbers.nozzles());
        Machine next = machine.sameAs(changed) ? machine : new Machine(changed);
        return new Solver(changed, next, sameWater ? waters : null);
    }

    private List<WaterSide> everyWater() {
        List<WaterSide> solved = new ArrayList<>();
        WaterSolver solver = new WaterSolver(numbers);
        for (NozzleGroup nozzles : numbers.nozzles().sets()) {
            solved.add(solver.solve(nozzles, mostAvailable()));
        }
        return solved;
    }

    private @Nullable StreamLevel most() {
        List<StreamLevel> stream = numbers.site().stream();
        return stream.isEmpty() ? null : stream.get(0);
    }

    private double mostAvailable() {
        StreamLevel most = most();
        return most == null ? Double.POSITIVE_INFINITY : most.available();
    }

    private boolean solvable() {
        return numbers.site().grossHead() > 0;
    }

    List<Running> running() {
        List<Running> cases = new ArrayList<>();
        if (solvable()) {
            for (int i = 0; i < numbers.nozzles().sets().size(); i++) {
                cases.add(running(
                        numbers.nozzles().sets().get(i), most(), waters.get().get(i)));
            }
        }
        return List.copyOf(cases);
    }

    Running running(NozzleGroup nozzles) {
        if (!solvable()) {
            throw new IllegalStateException("the head is not above zero");
        }
        int known = numbers.nozzles().sets().indexOf(nozzles);
        WaterSide water =
                known >= 0 ? waters.get().get(known) : new WaterSolver(numbers).solve(nozzles, mostAvailable());
        return running(nozzles, most(), water);
    }

    List<Running> overTheYear() {
        List<Running> cases = new ArrayList<>();
        if (solvable()) {
            NozzleGroup built = numbers.nozzles().asBuilt();
            WaterSolver solver = new WaterSolver(numbers);
            for (StreamLevel level : numbers.site().stream()) {
                cases.add(running(built, level, solver.solve(built, level.available())));
            }
        }
        return List.copyOf(cases);
    }

    private Running running(NozzleGroup nozzles, @Nullable StreamLevel level, WaterSide water) {
        Wheel wheel = new Wheel(numbers.runner(), numbers.water().density(), water);
        if (numbers.regulator().kind() != RegulatorKind.TRACKING) {
            return new Running(nozzles, level, water, Operating.of(numbers, water, wheel, machine.onBattery(), null));
        }
        Tracking tracking = new Tracker(numbers, machine, wheel).track();
        TorqueCurve curve = machine.curve(
                machine.bus(tracking.voltage(), numbers.busResistance().bridgeToRegulator()));
        return new Running(nozzles, level, water, Operating.of(numbers, water, wheel, curve, tracking));
    }

    Shut shut() {
        return new StandingWater(numbers).shut();
    }

    List<Closing> closing(List<Running> running) {
        StandingWater water = new StandingWater(numbers);
        List<Closing> cases = new ArrayList<>();
        for (Running set : running) {
            cases.addAll(water.closing(set));
        }
        return List.copyOf(cases);
    }

    List<LoadLost> loadLost(List<Running> running) {
        List<LoadLost> cases = new ArrayList<>();
        for (Running set : running) {
            cases.add(Unloaded.of(numbers, set));
        }
        return List.copyOf(cases);
    }

    List<BatteryFull> batteryFull(List<Running> running, List<LoadLost> loadLost) {
        List<BatteryFull> cases = new ArrayList<>();
        FullBattery full = new FullBattery(numbers, machine);
        for (int i = 0; i < running.size(); i++) {
            cases.add(full.of(running.get(i), loadLost.get(i)));
        }
        return List.copyOf(cases);
    }
}
