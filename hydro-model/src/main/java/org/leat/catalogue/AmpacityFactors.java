package org.leat.catalogue;

import org.leat.design.CableInsulation;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Factors on the capacity of a cable: ambient air (IEC 60364-5-52:2009, B.52.14) and grouped circuits (B.52.17, item 1), from
 * {@code ambient-factors.csv} and {@code grouping-factors.csv}. Temperatures in K.
 *
 * <p>A number of circuits between two of the table counts as the greater; ambient temperatures between two are taken on the
 * straight line, which lies below the curve of the table: both on the safe side. Below the least and above the greatest of a
 * table there is no answer.
 */
public final class AmpacityFactors {

    private static final double ZERO_CELSIUS = 273.15;
    private static final Table<AmbientFactor> AMBIENT = Table.of("ambient-factors", AmbientFactor.class);
    private static final Table<GroupingFactor> GROUPING = Table.of("grouping-factors", GroupingFactor.class);

    private AmpacityFactors() {}

    private record AmbientFactor(String insulation, double ambient, double factor) {}

    private record GroupingFactor(int circuits, double factor) {}

    /** {@return factor of the ambient air, K} Tabled from 10 °C to 60 °C for PVC, to 80 °C for XLPE. */
    public static Answer ambient(CableInsulation insulation, double ambient) {
        Physical.positive("ambient", ambient);
        return Interpolation.answer(
                AMBIENT.rows().stream()
                        .filter(row -> row.insulation().equals(insulation.name()))
                        .map(row -> new Interpolation.Point(row.ambient() + ZERO_CELSIUS, row.factor()))
                        .toList(),
                ambient,
                "IEC 60364-5-52 ambient factor",
                "ambient",
                "K");
    }

    /** {@return factor of loaded circuits side by side} Tabled for one to twenty. */
    public static Answer grouping(int circuits) {
        Physical.within("circuits", circuits, 1, Integer.MAX_VALUE);
        return GROUPING.rows().stream()
                .filter(row -> row.circuits() >= circuits)
                .findFirst()
                .map(row -> Answer.of(row.factor()))
                .orElseGet(() ->
                        Answer.outside("IEC 60364-5-52 grouping factor", "grouped circuits", circuits, 1, 20, "1"));
    }

    /** {@return their product, or the first that has no answer} */
    static Answer both(CableLaying laying) {
        Answer ambient = ambient(laying.insulation(), laying.ambient());
        Answer grouping = grouping(laying.groupedCircuits());
        if (ambient instanceof Answer.Value a && grouping instanceof Answer.Value g) {
            return Answer.of(a.value() * g.value());
        }
        return ambient.isValue() ? grouping : ambient;
    }
}
