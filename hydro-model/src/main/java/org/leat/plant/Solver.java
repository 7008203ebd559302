package org.leat.plant;

import java.util.List;

/** Solves a plant's numbers in each situation. */
@SuppressWarnings("DoNotCallSuggester")
final class Solver {

    private final PlantNumbers numbers;

    Solver(PlantNumbers numbers) {
        this.numbers = numbers;
    }

    Solver with(PlantNumbers changed) {
        return new Solver(changed);
    }

    List<Running> running() {
        throw new UnsupportedOperationException(numbers.toString());
    }

    Running running(NozzleGroup nozzles) {
        throw new UnsupportedOperationException(nozzles.name());
    }

    List<Running> overTheYear() {
        throw new UnsupportedOperationException();
    }

    Shut shut() {
        throw new UnsupportedOperationException();
    }

    List<Closing> closing(List<Running> running) {
        throw new UnsupportedOperationException(running.toString());
    }

    List<LoadLost> loadLost(List<Running> running) {
        throw new UnsupportedOperationException(running.toString());
    }

    List<BatteryFull> batteryFull(List<Running> running, List<LoadLost> loadLost) {
        throw new UnsupportedOperationException(running.toString() + loadLost);
    }
}
