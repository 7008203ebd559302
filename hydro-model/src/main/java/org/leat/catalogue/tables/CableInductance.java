package org.leat.catalogue.tables;

import java.util.List;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Inductance of ONE conductor of a cable per metre, H/m, from the reactances of {@code cable-reactance.csv}: {@code L = X/(2π 50
 * Hz)}. It goes with the area's logarithm, so little of it is lost between two sizes: an area between two has that of the smaller,
 * which is the greater. A run of three phases adds it to each phase of the winding (star), a two-wire run has twice it per metre.
 * Open wire: {@link org.leat.electrics.RunInductance}.
 *
 * <p>Range 1.5 to 95 mm²; outside there is no answer. Steel armour raises that of single cores (from memory) and is left out.
 */
public final class CableInductance {

    private static final double ANGULAR = 2 * Math.PI * 50;
    private static final LazyTable<Row> ROWS = LazyTable.of("cable-reactance", Row.class);

    private CableInductance() {}

    private record Row(String laying, double area, double reactance) {}

    /** How the conductors of a run lie. */
    public enum Lay {
        /** cores of one cable. */
        MULTICORE,
        /** single-core cables that touch. */
        SINGLE_CORES
    }

    /** {@return inductance of one conductor, H/m} Area in m². */
    public static Answer perConductor(Lay lay, double area) {
        Physical.positive("area", area);
        List<Row> rows = ROWS.rows().stream()
                .filter(row -> row.laying().equals(lay.name()))
                .toList();
        double low = rows.get(0).area() / 1e6;
        double high = rows.get(rows.size() - 1).area() / 1e6;
        if (area < low * 0.999 || area > high * 1.001) {
            return Answer.outside("inductance of a cable's conductor", "area", area, low, high, "m²");
        }
        double reactance = rows.stream()
                .filter(row -> row.area() / 1e6 <= area * 1.001)
                .mapToDouble(Row::reactance)
                .min()
                .orElseThrow();
        return Answer.of(reactance / 1000 / ANGULAR);
    }
}
