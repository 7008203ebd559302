package org.leat.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.leat.design.CableInsulation;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Current a cable carries for ever, I_z, in A: the tables of IEC 60364-5-52:2009 (B.52.2 to B.52.5, methods B2 and C) times
 * the factor of ambient air (B.52.14) times the factor of grouped circuits (B.52.17 item 1), from {@code ampacity.csv},
 * {@code ambient-factors.csv} and {@code grouping-factors.csv}. Areas in m², temperatures in K.
 *
 * <p>An area between two of the tables' carries what the smaller one carries; a number of circuits between two counts as the
 * greater; ambient temperatures between two are taken on the straight line, which lies below the curve of the table. All
 * three are on the safe side. Below the least and above the greatest of a table there is no answer.
 */
public final class AmpacityCatalogue {

    private static final String LAW = "IEC 60364-5-52 current-carrying capacity";
    private static final double ZERO_CELSIUS = 273.15;
    private static final List<Capacity> CAPACITIES = DataFile.rows("ampacity", Capacity.class);
    private static final List<AmbientFactor> AMBIENT = DataFile.rows("ambient-factors", AmbientFactor.class);
    private static final List<GroupingFactor> GROUPING = DataFile.rows("grouping-factors", GroupingFactor.class);

    private AmpacityCatalogue() {}

    private record Capacity(
            String material, String method, String insulation, int loaded, double area, double current) {}

    private record AmbientFactor(String insulation, double ambient, double factor) {}

    private record GroupingFactor(int circuits, double factor) {}

    /** {@return current of one core of an area, m², laid like this, in A} Cores in parallel are a matter of the caller. */
    public static Answer capacity(double area, CableLaying laying) {
        Physical.positive("area", area);
        Answer factor = factor(laying);
        if (!(factor instanceof Answer.Value value)) {
            return factor;
        }
        List<Capacity> rows = rows(laying);
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
        Answer factor = factor(laying);
        if (!(factor instanceof Answer.Value value)) {
            return factor;
        }
        List<Capacity> rows = rows(laying);
        for (Capacity row : rows) {
            if (row.current() * value.value() >= current) {
                return Answer.of(row.area() / 1e6);
            }
        }
        double greatest = rows.get(rows.size() - 1).current() * value.value();
        return Answer.outside(LAW, "current", current, 0, greatest, "A");
    }

    /** {@return factor of the ambient air, K} Tabled from 10 °C to 60 °C for PVC, to 80 °C for XLPE. */
    public static Answer ambientFactor(CableInsulation insulation, double ambient) {
        Physical.positive("ambient", ambient);
        List<Interpolation.Point> points = AMBIENT.stream()
                .filter(row -> row.insulation().equals(insulation.name()))
                .map(row -> new Interpolation.Point(row.ambient() + ZERO_CELSIUS, row.factor()))
                .toList();
        double low = points.get(0).x();
        double high = points.get(points.size() - 1).x();
        return ambient < low || ambient > high
                ? Answer.outside(LAW, "ambient", ambient, low, high, "K")
                : Answer.of(Interpolation.at(points, ambient));
    }

    /** {@return factor of loaded circuits side by side} Tabled for one to twenty. */
    public static Answer groupingFactor(int circuits) {
        Physical.within("circuits", circuits, 1, Integer.MAX_VALUE);
        return GROUPING.stream()
                .filter(row -> row.circuits() >= circuits)
                .findFirst()
                .map(row -> Answer.of(row.factor()))
                .orElseGet(() -> Answer.outside(LAW, "grouped circuits", circuits, 1, 20, "1"));
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

    private static Answer factor(CableLaying laying) {
        Answer ambient = ambientFactor(laying.insulation(), laying.ambient());
        Answer grouping = groupingFactor(laying.groupedCircuits());
        if (ambient instanceof Answer.Value a && grouping instanceof Answer.Value g) {
            return Answer.of(a.value() * g.value());
        }
        return ambient.isValue() ? grouping : ambient;
    }

    private static List<Capacity> rows(CableLaying laying) {
        return CAPACITIES.stream()
                .filter(row -> row.material().equals(laying.material().name().toLowerCase(Locale.ROOT))
                        && row.method().equals(laying.method().name())
                        && row.insulation().equals(laying.insulation().name())
                        && row.loaded() == laying.loadedConductors())
                .toList();
    }
}
