package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.leat.design.Design;
import org.leat.lazy.Once;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.BusSituation.DumpLoadLost;
import org.leat.plant.cases.BusSituation.ManagementOpens;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;

/**
 * The plant solved in each situation, each once. Safe to share between threads.
 *
 * <p>Where a number is missing without which nothing can be solved, the lists are empty and {@link #unsolved()} says
 * why.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Cases {

    private final Design design;
    private final PlantNumbers numbers;
    private final List<Amount.Unknown> unsolved;
    private final SituationSolver solver;
    private final Once<List<Running>> running;
    private final Once<List<Running>> overTheYear;
    private final Once<Shut> shut;
    private final Once<List<Closing>> closing;
    private final Once<PressureProfile> profile;
    private final Once<List<LoadLost>> loadLost;
    private final Once<List<BatteryFull>> batteryFull;
    private final Once<List<BatteryRemoved>> batteryRemoved;
    private final Once<List<ManagementOpens>> managementOpens;
    private final Once<List<DumpLoadLost>> dumpLost;
    private final Once<List<RegulatorFailedShort>> regulatorShort;
    private final Once<List<BrokenBridge>> broken;
    private final Once<List<BrokenBridge>> diodeShorted;
    private final Once<List<LeadsShorted>> leadsShorted;
    private final Once<List<CableDuty>> cableDuties;
    private final Once<List<Day>> days;
    private final Once<List<BusSituation>> onTheBus;

    private Cases(Design design, PlantNumbers numbers, List<Amount.Unknown> unsolved, SituationSolver solver) {
        this.design = design;
        this.numbers = numbers;
        this.unsolved = unsolved;
        this.solver = solver;
        running = new Once<>(solver::running);
        overTheYear = new Once<>(solver::overTheYear);
        shut = new Once<>(solver::shut);
        closing = new Once<>(solver::closing);
        profile = new Once<>(() -> PressureProfile.of(this, numbers));
        loadLost = new Once<>(() -> solver.loadLost(running()));
        batteryFull = new Once<>(() -> solver.batteryFull(running(), loadLost()));
        batteryRemoved = new Once<>(() -> solver.batteryRemoved(running(), batteryFull(), loadLost()));
        managementOpens = new Once<>(() -> design.battery().management() == null
                ? List.of()
                : batteryRemoved().stream().map(ManagementOpens::of).toList());
        dumpLost = new Once<>(() -> solver.dumpLost(loadLost()));
        regulatorShort = new Once<>(() -> solver.regulatorShort(running(), loadLost()));
        broken = new Once<>(solver::broken);
        diodeShorted = new Once<>(solver::diodeShorted);
        leadsShorted = new Once<>(this::everyLeadsShorted);
        cableDuties = new Once<>(() -> new CableDutySolver(design, numbers, running(), batteryFull()).all());
        days = new Once<>(this::everyDay);
        onTheBus = new Once<>(this::everyOnTheBus);
    }

    /**
     * {@return the situations of a design}
     *
     * @param unsolved the numbers without which nothing can be solved; empty where it can
     */
    public static Cases of(Design design, PlantNumbers numbers, List<Amount.Unknown> unsolved) {
        return of(design, numbers, unsolved, SolutionCache.nothing());
    }

    private static Cases of(Design design, PlantNumbers numbers, List<Amount.Unknown> unsolved, SolutionCache before) {
        return new Cases(design, numbers, unsolved, SituationSolver.of(numbers, before));
    }

    /** {@return the situations of another design, as in {@link #of}} What both have in common is not solved again. */
    public Cases near(Design other, PlantNumbers changed, List<Amount.Unknown> unsolvedThen) {
        return new Cases(other, changed, unsolvedThen, solver.with(changed));
    }

    /** {@return the numbers that were solved} */
    public PlantNumbers numbers() {
        return numbers;
    }

    /** {@return why nothing could be solved; empty where it was} */
    public List<Amount.Unknown> unsolved() {
        return unsolved;
    }

    /** {@return running on each nozzle set with the most water the stream has; the set open as built first} */
    public List<Running> running() {
        return running.get();
    }

    /**
     * {@return running on one nozzle set, on hand or not, with the most water the stream has}
     *
     * @throws IllegalStateException where {@link #unsolved()} is not empty
     */
    public Running running(NozzleGroup nozzles) {
        return solver.running(nozzles);
    }

    /**
     * {@return running on one nozzle set, on hand or not, with a flow of the stream}
     *
     * @param available what the stream has for the plant, m³/s
     * @throws IllegalStateException where {@link #unsolved()} is not empty
     */
    public Running running(NozzleGroup nozzles, double available) {
        return solver.running(nozzles, available);
    }

    /** {@return running on the set open as built at each flow of the stream, most water first; empty without a stream} */
    public List<Running> overTheYear() {
        return overTheYear.get();
    }

    /** {@return all nozzles shut} */
    public Shut shut() {
        return shut.get();
    }

    /** {@return the flow stopped, for each nozzle set and each thing that can stop it} */
    public List<Closing> closing() {
        return closing.get();
    }

    /** {@return pressures along the pipe, those of stops on whichever nozzle set is worst; no points where nothing could be solved} */
    public PressureProfile pressureProfile() {
        return profile.get();
    }

    /** {@return load lost on each nozzle set, in the order of {@link #running()}} */
    public List<LoadLost> loadLost() {
        return loadLost.get();
    }

    /** {@return battery full on each nozzle set, in the order of {@link #running()}} */
    public List<BatteryFull> batteryFull() {
        return batteryFull.get();
    }

    /** {@return battery removed on each nozzle set, in the order of {@link #running()}} */
    public List<BatteryRemoved> batteryRemoved() {
        return batteryRemoved.get();
    }

    /** {@return the battery's management opens, on each nozzle set; empty where the battery has none} */
    public List<ManagementOpens> managementOpens() {
        return managementOpens.get();
    }

    /** {@return the dump load lost while the battery is full, on each nozzle set; empty without a dump load} */
    public List<DumpLoadLost> dumpLost() {
        return dumpLost.get();
    }

    /**
     * {@return the regulator failed short, on each nozzle set; empty where none stands between bridge and battery} A fault of its
     * own: not among {@link #onTheBus()}.
     */
    public List<RegulatorFailedShort> regulatorFailedShort() {
        return regulatorShort.get();
    }

    /**
     * {@return one phase and one diode open on each nozzle set on which current flows, the set open as built first; empty where
     * the winding has no inductance} Stepped in time: a few milliseconds for each set when first asked for.
     */
    public List<BrokenBridge> broken() {
        return broken.get();
    }

    /**
     * {@return one diode shorted on each nozzle set on which the wheel turns; empty where the winding has no inductance} The
     * battery need not be reached: the current goes round through the bridge. Stepped in time as {@link #broken()}.
     */
    public List<BrokenBridge> diodeShorted() {
        return diodeShorted.get();
    }

    /** {@return the alternator's leads shorted, on each nozzle set, in the order of {@link #running()}} */
    public List<LeadsShorted> leadsShorted() {
        return leadsShorted.get();
    }

    private List<LeadsShorted> everyLeadsShorted() {
        return IntStream.range(0, running().size())
                .mapToObj(i ->
                        LeadsShorted.of(numbers, running().get(i), loadLost().get(i)))
                .toList();
    }

    /** {@return the greatest lasting current of each run, in the design's order; empty where nothing could be solved} */
    public List<CableDuty> cableDuties() {
        return cableDuties.get();
    }

    /** {@return the coldest and the hottest day with the nozzles as built; empty where nothing could be solved} */
    public List<Day> days() {
        return days.get();
    }

    private List<Day> everyDay() {
        return running().isEmpty()
                ? List.of()
                : Stream.of(Day.Season.values())
                        .map(season -> DaySolver.of(
                                design, numbers, season, batteryRemoved().get(0)))
                        .toList();
    }

    /**
     * {@return what can make the highest voltage of the bus, each situation on each nozzle set, the likelier first} Faults of
     * the bridge and the days of the year are not among them: the battery holds the bus then, and the cold magnets are counted
     * where the load is lost. Neither is a regulator that has failed short, which has a rule of its own.
     */
    public List<BusSituation> onTheBus() {
        return onTheBus.get();
    }

    private List<BusSituation> everyOnTheBus() {
        List<BusSituation> all = new ArrayList<>(running());
        all.addAll(batteryFull());
        all.addAll(batteryRemoved());
        all.addAll(managementOpens());
        all.addAll(dumpLost());
        all.addAll(loadLost());
        return List.copyOf(all);
    }

    /** {@return every situation that makes a voltage on the bus, those that are stepped in time last} */
    public BusSituations busSituations() {
        return new BusSituations(() -> {
            List<BusSituation> all = new ArrayList<>(onTheBus());
            all.addAll(regulatorFailedShort());
            all.addAll(broken());
            all.addAll(diodeShorted());
            all.addAll(days());
            return List.copyOf(all);
        });
    }

    /** {@return the thickest jet of all nozzle sets against the wheel; one set at least is solved} */
    public JetOnRunner thickestJet() {
        return JetOnRunner.thickest(numbers, running());
    }

    /** {@return the window of a tracking regulator that would suit; the plant is solved} */
    public TrackingWindow trackingWindow() {
        return TrackingWindow.of(numbers, running());
    }

    /** {@return the highest voltages of any situation that last: not those of a moment} */
    public TouchVoltage touchVoltage() {
        return TouchVoltage.of(this);
    }

    /** Solves the situations of many designs, and what takes long and is equal in two of them once. Safe to share between threads. */
    public static final class Factory {

        private final SolutionCache before = SolutionCache.nothing();

        /** Nothing is solved yet. */
        public Factory() {}

        /** {@return the situations of a design, as in {@link Cases#of}} */
        public Cases of(Design design, PlantNumbers numbers, List<Amount.Unknown> unsolved) {
            return Cases.of(design, numbers, unsolved, before);
        }

        SolutionCache before() {
            return before;
        }
    }
}
