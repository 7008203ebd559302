package org.leat.plant;

import java.util.List;

/**
 * The plant solved in each situation, each once. Safe to share between threads.
 *
 * <p>Where a number is missing without which nothing can be solved, the lists are empty and {@link #unsolved()} says
 * why.
 */
public final class Cases {

    private final Plant plant;
    private final Once<List<Running>> running;
    private final Once<List<Running>> overTheYear;
    private final Once<Shut> shut;
    private final Once<List<Closing>> closing;
    private final Once<PressureProfile> profile;
    private final Once<List<LoadLost>> loadLost;
    private final Once<List<BatteryFull>> batteryFull;

    Cases(Plant plant, Solver solver) {
        this.plant = plant;
        running = new Once<>(solver::running);
        overTheYear = new Once<>(solver::overTheYear);
        shut = new Once<>(solver::shut);
        closing = new Once<>(solver::closing);
        profile = new Once<>(() -> PressureProfile.of(this));
        loadLost = new Once<>(() -> solver.loadLost(running()));
        batteryFull = new Once<>(() -> solver.batteryFull(running(), loadLost()));
    }

    /** {@return the plant that was solved} */
    public Plant plant() {
        return plant;
    }

    /** {@return why nothing could be solved; empty where it was} */
    public List<Amount.Unknown> unsolved() {
        return plant.unsolvable();
    }

    /** {@return running on each nozzle set with the most water the stream has; the set open as built first} */
    public List<Running> running() {
        return running.get();
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

    /** {@return pressures along the pipe with the nozzles as built; no points where nothing could be solved} */
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

    /** {@return the highest voltages of any situation that last: not those of a moment} */
    public TouchVoltage touchVoltage() {
        return TouchVoltage.of(this);
    }
}
