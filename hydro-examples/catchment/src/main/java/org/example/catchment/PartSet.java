package org.example.catchment;

import java.util.Collections;
import java.util.List;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;

/**
 * A set of parts: a nozzle, how many of it, and a wheel; pipe, machine and bank are those of the design.
 *
 * @param number of the set
 * @param bore of a nozzle, m
 * @param jets of them
 * @param pitch diameter of the wheel, m
 */
record PartSet(int number, double bore, int jets, double pitch) {

    /** How many sets there are. */
    static final int SETS = 100;

    private static final int WHEELS = 5;
    private static final int BORES = 10;

    static PartSet of(int number) {
        int wheel = number % WHEELS;
        int bore = number / WHEELS % BORES;
        int jets = 1 + number / (WHEELS * BORES);
        return new PartSet(number, 1e-3 * (5 + bore), jets, 0.12 + 0.03 * wheel);
    }

    /** {@return the plant with these parts} */
    PlantNumbers with(PlantNumbers numbers) {
        List<Double> bores = Collections.nCopies(jets, bore);
        NozzleGroup set = new NozzleGroup(NozzleGroup.nameOf(bores), bores, true);
        return numbers.withNozzles(numbers.nozzles().withSets(List.of(set)))
                .withRunner(numbers.runner().withPitchDiameter(pitch));
    }
}
