package org.leat.plant.numbers;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.apiguardian.api.API;

/**
 * Nozzles opened together.
 *
 * @param name what to call the set: as in the design, or its bores, as {@code 10 mm + 10 mm}
 * @param bores m
 * @param asBuilt whether it is the set open as built
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record NozzleGroup(String name, List<Double> bores, boolean asBuilt) {
    public NozzleGroup {
        bores = List.copyOf(bores);
        if (bores.isEmpty()) {
            throw new IllegalArgumentException("a set has at least one nozzle");
        }
    }

    /** {@return area of all bores, m²} */
    public double area() {
        double sum = 0;
        for (double d : bores) {
            sum += Math.PI / 4 * d * d;
        }
        return sum;
    }

    /** {@return a set of one bore in as many positions, as those that could be fitted} */
    public NozzleGroup withBores(double bore) {
        return new NozzleGroup(
                nameOf(Collections.nCopies(bores.size(), bore)), Collections.nCopies(bores.size(), bore), false);
    }

    /** {@return the name of a set that has none: its bores in millimetres} */
    public static String nameOf(List<Double> bores) {
        StringBuilder name = new StringBuilder();
        for (double d : bores) {
            name.append(name.isEmpty() ? "" : " + ").append(millimetres(d));
        }
        return name + " mm";
    }

    private static String millimetres(double metres) {
        return BigDecimal.valueOf(Math.round(metres * 1e5), 2)
                .stripTrailingZeros()
                .toPlainString();
    }
}
