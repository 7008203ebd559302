package org.leat.catalogue.tables;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.leat.catalogue.rows.Spread;
import org.leat.design.Chemistry;
import org.leat.law.Answer;
import org.leat.law.Physical;
import org.leat.lazy.Once;

/**
 * What cells of each chemistry want where their maker says nothing else, from {@code cell-chemistries.csv},
 * {@code cycle-life.csv} and {@code open-circuit-voltage.csv}. Much of it is common practice, as each value's source
 * says; the maker's data sheet always goes before. Capacities in A·s (coulomb).
 */
public final class CellChemistryCatalogue {

    private static final LazyTable<Row> ROWS = LazyTable.of("cell-chemistries", Row.class);
    private static final LazyTable<CyclePoint> CYCLES = LazyTable.of("cycle-life", CyclePoint.class);
    private static final LazyTable<RestPoint> REST = LazyTable.of("open-circuit-voltage", RestPoint.class);

    private static final Once<Map<Chemistry, Map<CellProperty, Spread>>> SPREADS =
            new Once<>(CellChemistryCatalogue::spreads);

    private CellChemistryCatalogue() {}

    private static Map<Chemistry, Map<CellProperty, Spread>> spreads() {
        Map<Chemistry, Map<CellProperty, Spread>> all = new EnumMap<>(Chemistry.class);
        for (Chemistry chemistry : Chemistry.values()) {
            Map<CellProperty, Spread> of = new EnumMap<>(CellProperty.class);
            for (CellProperty property : CellProperty.values()) {
                read(chemistry, property).ifPresent(spread -> of.put(property, spread));
            }
            all.put(chemistry, of);
        }
        return all;
    }

    private record Row(String chemistry, String property, double low, double usual, double high, String source) {}

    private record CyclePoint(String chemistry, double depth, double cycles) {}

    private record RestPoint(String chemistry, double stateOfCharge, double voltage) {}

    /** {@return the property of one cell with its range, in SI; empty where the chemistry must not have it} */
    public static Optional<Spread> find(Chemistry chemistry, CellProperty property) {
        return Optional.ofNullable(
                SPREADS.get().getOrDefault(chemistry, Map.of()).get(property));
    }

    private static Optional<Spread> read(Chemistry chemistry, CellProperty property) {
        String key = key(chemistry);
        String column = property.column();
        return ROWS.rows().stream()
                .filter(row -> row.chemistry().equals(key) && row.property().equals(column))
                .map(row -> new Spread(
                        property.toSi(row.low()), property.toSi(row.usual()), property.toSi(row.high()), row.source()))
                .findFirst();
    }

    /** {@return the property's usual value, in SI} Throws where the chemistry must not have it. */
    public static double usual(Chemistry chemistry, CellProperty property) {
        return find(chemistry, property)
                .orElseThrow(() -> new IllegalArgumentException(chemistry + " has no " + property))
                .usual();
    }

    /** {@return greatest charge current, A, of a bank of a capacity, A·s, with its range} */
    public static Spread greatestChargeCurrent(Chemistry chemistry, double capacity) {
        Physical.positive("capacity", capacity);
        return find(chemistry, CellProperty.CHARGE_RATE).orElseThrow().times(capacity);
    }

    /**
     * {@return internal resistance of a whole bank, Ω, with its range; common practice}
     *
     * @param cellsInSeries from pole to pole
     * @param capacity of the whole bank, A·s: strings in parallel are counted by it
     */
    public static Spread internalResistance(Chemistry chemistry, int cellsInSeries, double capacity) {
        Physical.positive("cells in series", cellsInSeries);
        Physical.positive("capacity", capacity);
        return find(chemistry, CellProperty.INTERNAL_RESISTANCE).orElseThrow().times(cellsInSeries / capacity);
    }

    /** {@return voltage of one cell at rest, V, at a state of charge from 0 to 1; common practice} */
    public static double openCircuitVoltage(Chemistry chemistry, double stateOfCharge) {
        Physical.within("state of charge", stateOfCharge, 0, 1);
        String key = key(chemistry);
        return Interpolation.at(
                REST.rows().stream()
                        .filter(row -> row.chemistry().equals(key))
                        .map(row -> new Interpolation.Point(row.stateOfCharge(), row.voltage()))
                        .toList(),
                stateOfCharge);
    }

    /**
     * {@return cycles to 80 % of the capacity at a depth of discharge, 25 °C} Outside the table's depths there is no
     * answer: shallow cycling ends by age, not by cycles.
     */
    public static Answer cycles(Chemistry chemistry, double depthOfDischarge) {
        Physical.within("depth of discharge", depthOfDischarge, 0, 1);
        String key = key(chemistry);
        return Interpolation.answer(
                CYCLES.rows().stream()
                        .filter(row -> row.chemistry().equals(key))
                        .map(row -> new Interpolation.Point(row.depth(), row.cycles()))
                        .toList(),
                depthOfDischarge,
                "cycle life",
                "depth of discharge",
                "1");
    }

    private static String key(Chemistry chemistry) {
        return chemistry.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
