package org.leat.catalogue.tables;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.leat.design.CableInsulation;
import org.leat.law.Answer;
import org.leat.law.Physical;
import org.leat.lazy.Once;

/**
 * Current a cable carries for ever, I_z, in A: the tables of IEC 60364-5-52:2009 (B.52.2 to B.52.5, B.52.10 and
 * B.52.12; methods B2, C, D1, D2, E and F), from
 * {@code ampacity.csv}, times the {@link AmpacityFactors}. Areas in m², temperatures in K.
 *
 * <p>An area between two of the tables' carries what the smaller one carries, on the safe side. Below the least and above the
 * greatest of a table there is no answer, and none where no table is at hand: aluminium in the ground or in free air, two cores
 * flat. The simplified annex C of the same standard lists other values for the ground; it is not used.
 */
public final class AmpacityCatalogue {

    private static final String LAW = "IEC 60364-5-52 current-carrying capacity";
    private static final double ZERO_CELSIUS = 273.15;
    private static final LazyTable<Capacity> CAPACITIES = LazyTable.of("ampacity", Capacity.class);
    private static final Once<Map<String, List<Capacity>>> BY_LAYING = new Once<>(() -> CAPACITIES.rows().stream()
            .collect(Collectors.groupingBy(row -> laid(row.material(), row.method(), row.insulation(), row.loaded()))));

    private AmpacityCatalogue() {}

    private static String laid(String material, String method, String insulation, int loaded) {
        return material + '/' + method + '/' + insulation + '/' + loaded;
    }

    private record Capacity(
            String material, String method, String insulation, int loaded, double area, double current) {}

    /** {@return current of one core of an area, m², laid like this, in A} Cores in parallel are a matter of the caller. */
    public static Answer capacity(double area, CableLaying laying) {
        Physical.positive("area", area);
        Answer factor = AmpacityFactors.all(laying);
        if (!(factor instanceof Answer.Value value)) {
            return factor;
        }
        List<Capacity> rows = rows(laying);
        if (rows.isEmpty()) {
            return noTable(laying);
        }
        double low = rows.get(0).area() / 1e6;
        double high = rows.get(rows.size() - 1).area() / 1e6;
        if (area < low * 0.999 || area > high * 1.001) {
            return Answer.outside(LAW, "area", area, low, high, "m²");
        }
        double tabled = rows.stream()
                .filter(row -> row.area() / 1e6 <= area * 1.001)
                .mapToDouble(Capacity::current)
                .max()
                .orElseThrow();
        return Answer.of(tabled * value.value());
    }

    /**
     * {@return the least tabled area, m², whose capacity is no less than a current, A} Outside, with the capacity of the
     * greatest as limit, where none is.
     */
    public static Answer smallestThatCarries(double current, CableLaying laying) {
        Physical.notNegative("current", current);
        Answer factor = AmpacityFactors.all(laying);
        if (!(factor instanceof Answer.Value value)) {
            return factor;
        }
        List<Capacity> rows = rows(laying);
        if (rows.isEmpty()) {
            return noTable(laying);
        }
        for (Capacity row : rows) {
            if (row.current() * value.value() >= current) {
                return Answer.of(row.area() / 1e6);
            }
        }
        double greatest = rows.get(rows.size() - 1).current() * value.value();
        return Answer.outside(LAW, "current", current, 0, greatest, "A");
    }

    private static Answer noTable(CableLaying laying) {
        return Answer.outside(
                LAW + ", a table for this material and method",
                "loaded conductors",
                laying.loadedConductors(),
                0,
                0,
                "1");
    }

    /** {@return temperature of a conductor that carries its capacity, K} IEC 60364-5-52, table 52.1. */
    public static double conductorTemperature(CableInsulation insulation) {
        return switch (insulation) {
            case PVC -> 70 + ZERO_CELSIUS;
            case XLPE -> 90 + ZERO_CELSIUS;
        };
    }

    /** {@return tabled areas for this laying, m², rising} */
    public static DoubleStream areas(CableLaying laying) {
        return rows(laying).stream().mapToDouble(row -> row.area() / 1e6);
    }

    private static List<Capacity> rows(CableLaying laying) {
        return BY_LAYING
                .get()
                .getOrDefault(
                        laid(
                                laying.material().name().toLowerCase(Locale.ROOT),
                                laying.method().name(),
                                laying.insulation().name(),
                                laying.loadedConductors()),
                        List.of());
    }
}
