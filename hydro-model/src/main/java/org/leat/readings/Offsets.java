package org.leat.readings;

import java.util.List;
import org.leat.plant.Plant;

/** A plant with each tolerance of building moved by itself. */
final class Offsets {

    /** Of the tolerance over which a sensitivity is taken: downward, where nothing passes what it can be. */
    private static final double MOVED = -0.5;

    private Offsets() {}

    static List<Plant> of(Plant plant) {
        return BuildTolerance.all(plant.numbers()).stream()
                .map(build -> plant.withNumbers(build.change().apply(plant.numbers(), MOVED * build.standard())))
                .toList();
    }

    /** {@return what one standard uncertainty moves} */
    static double[] sensitivity(double[] values, double[] there) {
        double[] moved = new double[values.length];
        for (int s = 0; s < moved.length; s++) {
            moved[s] = (there[s] - values[s]) / MOVED;
        }
        return moved;
    }
}
