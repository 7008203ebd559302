package org.leat.catalogue.tables;

import java.util.List;
import java.util.Optional;

/**
 * A usual range of specific speed of a kind of wheel, from {@code specific-speed-ranges.csv}: what lies outside is worth a warning, no
 * more; texts differ by a quarter. Laws: {@link org.leat.turbine.SpecificSpeed}.
 *
 * @param kind of wheel: pelton-1, pelton-2, pelton-4 (jets), turgo, crossflow, francis, propeller, impulse
 * @param measure nQE (dimensionless, 1/s), ns (rpm, kW, m) or ns-us (rpm, horsepower, feet)
 * @param low least
 * @param high greatest
 * @param origin read or memory
 */
public record SpecificSpeedRange(String kind, String measure, double low, double high, String origin) {

    private static final LazyTable<SpecificSpeedRange> ALL =
            LazyTable.of("specific-speed-ranges", SpecificSpeedRange.class);

    /** {@return all of the table} */
    public static List<SpecificSpeedRange> all() {
        return ALL.rows();
    }

    /** {@return the range of a kind in a measure; empty where none is tabled} */
    public static Optional<SpecificSpeedRange> find(String kind, String measure) {
        return ALL.rows().stream()
                .filter(range -> range.kind().equals(kind) && range.measure().equals(measure))
                .findFirst();
    }

    /** {@return whether a value lies inside, both ends included} */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
