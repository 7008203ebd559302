package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leat.lazy.Once;
import org.leat.lazy.OncePerKey;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.BusSituation.DumpLoadLost;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.plant.solve.ElectricSide;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.TorqueCurve;
import org.leat.plant.solve.WaterSolver;
import org.leat.plant.solve.WindingHeatBalance;
import org.leat.plant.solved.WaterSide;

/** Solves a plant's numbers in each situation. What other numbers share with these is not solved again. */
final class SituationSolver {

    private final PlantNumbers numbers;
    private final SolutionCache before;
    private final ElectricSide machine;
    private final Once<List<WaterSide>> waters;
    /** By the winding's temperature, K. */
    private final OncePerKey<Double, TorqueCurve> atSetVoltage;
    /** By the winding's temperature, K. */
    private final OncePerKey<Double, TorqueCurve> onDumpAlone;

    private final Once<List<Running>> running;
    private final Once<List<Running>> overTheYear;
    private final Once<List<Closing>> closing;
    private final Once<List<BrokenBridge>> broken;
    private final Once<List<BrokenBridge>> diodeShorted;

    private SituationSolver(PlantNumbers numbers, SolutionCache before) {
        this.numbers = numbers;
        this.before = before;
        this.machine = new ElectricSide(numbers);
        this.waters = new Once<>(this::everyWater);
        this.running = new Once<>(this::everyRunning);
        this.overTheYear = new Once<>(this::everyFlow);
        this.closing = new Once<>(this::everyClosing);
        this.broken = new Once<>(this::everyBroken);
        this.diodeShorted = new Once<>(this::everyDiodeShorted);
        this.atSetVoltage = new OncePerKey<>(this::full);
        this.onDumpAlone = new OncePerKey<>(this::dumping);
    }

    /** Keeps of another solver what the numbers leave the same. */
    private SituationSolver(PlantNumbers numbers, SituationSolver near) {
        this.numbers = numbers;
        this.before = near.before;
        boolean sameMachine = near.machine.sameAs(numbers);
        boolean sameWater = near.sameWater(numbers);
        boolean sameRunning = sameMachine && sameWater && near.sameWheelAndRegulator(numbers);
        boolean sameFull = sameMachine && near.numbers.fullVoltage() == numbers.fullVoltage();
        boolean sameDump = sameMachine && Objects.equals(near.numbers.dumpLoad(), numbers.dumpLoad());
        this.machine = sameMachine ? near.machine : new ElectricSide(numbers);
        this.waters = sameWater ? near.waters : new Once<>(this::everyWater);
        this.running = sameRunning ? near.running : new Once<>(this::everyRunning);
        this.overTheYear = sameRunning ? near.overTheYear : new Once<>(this::everyFlow);
        this.closing = sameWater ? near.closing : new Once<>(this::everyClosing);
        this.broken = sameRunning ? near.broken : new Once<>(this::everyBroken);
        this.diodeShorted = sameRunning ? near.diodeShorted : new Once<>(this::everyDiodeShorted);
        this.atSetVoltage = sameFull ? near.atSetVoltage : new OncePerKey<>(this::full);
        this.onDumpAlone = sameDump ? near.onDumpAlone : new OncePerKey<>(this::dumping);
    }

    private TorqueCurve full(double kelvin) {
        ElectricSide warm = warm(kelvin);
        return warm.curve(
                warm.bus(numbers.fullVoltage(), numbers.busResistance().bridgeToRegulator()));
    }

    private TorqueCurve dumping(double kelvin) {
        double element = Objects.requireNonNull(numbers.dumpLoad()).resistanceHot();
        ElectricSide warm = warm(kelvin);
        return warm.curve(warm.bus(0, element + numbers.busResistance().bridgeToRegulator()));
    }

    static SituationSolver of(PlantNumbers numbers, SolutionCache before) {
        return new SituationSolver(numbers, before);
    }

    SituationSolver with(PlantNumbers changed) {
        return new SituationSolver(changed, this);
    }

    private boolean sameWater(PlantNumbers changed) {
        return Objects.equals(changed.site(), numbers.site())
                && Objects.equals(changed.water(), numbers.water())
                && Objects.equals(changed.penstock(), numbers.penstock())
                && Objects.equals(changed.nozzles(), numbers.nozzles());
    }

    private boolean sameWheelAndRegulator(PlantNumbers changed) {
        return Objects.equals(changed.runner(), numbers.runner())
                && (Objects.equals(changed.regulator(), numbers.regulator())
                        || changed.regulator()
                                .withoutInputLimit()
                                .equals(numbers.regulator().withoutInputLimit()));
    }

    private List<WaterSide> everyWater() {
        List<WaterSide> solved = new ArrayList<>();
        WaterSolver solver = new WaterSolver(numbers);
        for (NozzleGroup nozzles : numbers.nozzles().sets()) {
            solved.add(mostWater(solver, nozzles));
        }
        return solved;
    }

    private @Nullable StreamLevel most() {
        List<StreamLevel> stream = numbers.site().stream();
        return stream.isEmpty() ? null : stream.get(0);
    }

    /** The water with the most the stream has; a stream that is not stated keeps the pipe full. */
    private WaterSide mostWater(WaterSolver solver, NozzleGroup nozzles) {
        StreamLevel most = most();
        return most == null ? solver.full(nozzles) : solver.solve(nozzles, most.available());
    }

    private boolean solvable() {
        return numbers.site().falls();
    }

    List<Running> running() {
        return running.get();
    }

    private List<Running> everyRunning() {
        List<Running> cases = new ArrayList<>();
        if (solvable()) {
            for (int i = 0; i < numbers.nozzles().sets().size(); i++) {
                cases.add(running(
                        numbers.nozzles().sets().get(i), most(), waters.get().get(i)));
            }
        }
        return List.copyOf(cases);
    }

    Running running(NozzleGroup nozzles, double available) {
        mustBeSolvable();
        return running(nozzles, null, new WaterSolver(numbers).solve(nozzles, available));
    }

    private void mustBeSolvable() {
        if (!solvable()) {
            throw new IllegalStateException("the head is not above zero");
        }
    }

    Running running(NozzleGroup nozzles) {
        mustBeSolvable();
        int known = numbers.nozzles().sets().indexOf(nozzles);
        WaterSide water = known >= 0 ? waters.get().get(known) : mostWater(new WaterSolver(numbers), nozzles);
        return running(nozzles, most(), water);
    }

    List<Running> overTheYear() {
        return overTheYear.get();
    }

    private List<Running> everyFlow() {
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
        RunnerCharacteristic runner =
                new RunnerCharacteristic(numbers.runner(), numbers.water().density(), water);
        return new Running(
                nozzles, level, water, new WindingHeatBalance(numbers, machine, runner, water).operatingPoint());
    }

    /** {@return the machine with its winding at a temperature, K} As it is where no temperature follows from its losses. */
    private ElectricSide warm(double kelvin) {
        return numbers.alternator().thermalResistance().isKnown() ? machine.warmedTo(kelvin) : machine;
    }

    Shut shut() {
        return new ClosingSolver(numbers, before.partedStops()).shut();
    }

    List<Closing> closing() {
        return closing.get();
    }

    private List<Closing> everyClosing() {
        ClosingSolver water = new ClosingSolver(numbers, before.partedStops());
        List<Closing> cases = new ArrayList<>();
        for (Running set : running()) {
            cases.addAll(water.closing(set));
        }
        return List.copyOf(cases);
    }

    /** A stream measured on a dry day fills the pipe on a wet one: a runaway, and a broken bridge, is that of the full pipe. */
    private Running filled(Running set) {
        return set.water().fullPipe()
                ? set
                : running(set.nozzles(), null, new WaterSolver(numbers).full(set.nozzles()));
    }

    List<LoadLost> loadLost(List<Running> running) {
        List<LoadLost> cases = new ArrayList<>();
        for (Running set : running) {
            cases.add(LoadLostSolver.of(numbers, filled(set)));
        }
        return List.copyOf(cases);
    }

    List<BatteryRemoved> batteryRemoved(List<Running> running, List<BatteryFull> full, List<LoadLost> lost) {
        List<BatteryRemoved> cases = new ArrayList<>();
        for (int i = 0; i < running.size(); i++) {
            cases.add(BatteryRemovedSolver.removed(numbers, running.get(i), full.get(i), lost.get(i)));
        }
        return List.copyOf(cases);
    }

    List<DumpLoadLost> dumpLost(List<LoadLost> lost) {
        return numbers.dumpLoad() == null
                ? List.of()
                : lost.stream()
                        .map(each -> BatteryRemovedSolver.dumpLost(numbers, each))
                        .toList();
    }

    /** Empty where bridge and battery are one node anyway. */
    List<RegulatorFailedShort> regulatorShort(List<Running> running, List<LoadLost> lost) {
        List<RegulatorFailedShort> cases = new ArrayList<>();
        if (numbers.regulator().divides()) {
            OncePerKey<Double, TorqueCurve> onBattery = new OncePerKey<>(kelvin -> {
                ElectricSide warm = warm(kelvin);
                return warm.curve(warm.onItsBattery());
            });
            for (int i = 0; i < running.size(); i++) {
                double kelvin = running.get(i).operatingPoint().windingTemperature();
                cases.add(new RegulatorFailedShortSolver(
                                numbers, onBattery.get(kelvin), new Once<>(() -> atSetVoltage.get(kelvin)))
                        .of(running.get(i), lost.get(i)));
            }
        }
        return List.copyOf(cases);
    }

    List<BrokenBridge> broken() {
        return broken.get();
    }

    private List<BrokenBridge> everyBroken() {
        return running().stream()
                .flatMap(set -> BrokenBridgeSolver.open(numbers, filled(set), before.brokenBridges()).stream())
                .toList();
    }

    List<BrokenBridge> diodeShorted() {
        return diodeShorted.get();
    }

    private List<BrokenBridge> everyDiodeShorted() {
        return running().stream()
                .flatMap(set -> BrokenBridgeSolver.shorted(numbers, filled(set), before.brokenBridges()).stream())
                .toList();
    }

    List<BatteryFull> batteryFull(List<Running> running, List<LoadLost> loadLost) {
        List<BatteryFull> cases = new ArrayList<>();
        for (int i = 0; i < running.size(); i++) {
            double kelvin = running.get(i).operatingPoint().windingTemperature();
            BatteryFullSolver full = new BatteryFullSolver(
                    numbers, new Once<>(() -> atSetVoltage.get(kelvin)), new Once<>(() -> onDumpAlone.get(kelvin)));
            cases.add(full.of(running.get(i), loadLost.get(i)));
        }
        return List.copyOf(cases);
    }
}
