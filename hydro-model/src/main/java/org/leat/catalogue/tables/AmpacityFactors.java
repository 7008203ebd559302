package org.leat.catalogue.tables;

import java.util.List;
import org.leat.design.CableInsulation;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Factors on the capacity of a cable: ambient air (IEC 60364-5-52:2009, B.52.14) and grouped circuits (B.52.17, item 1); of a buried
 * cable the ground's temperature (B.52.15), the soil's thermal resistivity (B.52.16) and circuits side by side (B.52.18, B.52.19,
 * touching). Temperatures in K, resistivities in K m/W.
 *
 * <p>A number of circuits between two of the table counts as the greater; ambient temperatures between two are taken on the
 * straight line, which lies below the curve of the table: both on the safe side. Below the least and above the greatest of a
 * table there is no answer.
 */
public final class AmpacityFactors {

    private static final double ZERO_CELSIUS = 273.15;
    private static final LazyTable<AmbientFactor> AMBIENT = LazyTable.of("ambient-factors", AmbientFactor.class);
    private static final LazyTable<GroupingFactor> GROUPING = LazyTable.of("grouping-factors", GroupingFactor.class);

    private static final LazyTable<AmbientFactor> GROUND = LazyTable.of("ground-factors", AmbientFactor.class);
    private static final LazyTable<SoilFactor> SOIL = LazyTable.of("soil-factors", SoilFactor.class);
    private static final LazyTable<BuriedFactor> BURIED = LazyTable.of("buried-grouping", BuriedFactor.class);

    private AmpacityFactors() {}

    private record SoilFactor(String method, double resistivity, double factor) {}

    private record BuriedFactor(String method, int circuits, double factor) {}

    private record AmbientFactor(String insulation, double ambient, double factor) {}

    private record GroupingFactor(int circuits, double factor) {}

    /** {@return factor of the ambient air, K} Tabled from 10 °C to 60 °C for PVC, to 80 °C for XLPE. */
    public static Answer ambient(CableInsulation insulation, double ambient) {
        return ofTemperature(AMBIENT, insulation, ambient, "IEC 60364-5-52 ambient factor");
    }

    /** {@return factor of the ground's temperature, K} Tabled from 10 °C to 50 °C. */
    public static Answer ground(CableInsulation insulation, double ground) {
        return ofTemperature(GROUND, insulation, ground, "IEC 60364-5-52 ground temperature factor");
    }

    private static Answer ofTemperature(
            LazyTable<AmbientFactor> table, CableInsulation insulation, double temperature, String law) {
        Physical.positive("ambient", temperature);
        return Interpolation.answer(
                table.rows().stream()
                        .filter(row -> row.insulation().equals(insulation.name()))
                        .map(row -> new Interpolation.Point(row.ambient() + ZERO_CELSIUS, row.factor()))
                        .toList(),
                temperature,
                law,
                "ambient",
                "K");
    }

    /** {@return factor of the soil's thermal resistivity, K m/W, on a buried cable} Tabled from 0.5 to 3; 1 at 2.5. */
    public static Answer soil(ReferenceMethod method, double resistivity) {
        Physical.positive("resistivity", resistivity);
        return !method.buried()
                ? Answer.of(1)
                : Interpolation.answer(
                        SOIL.rows().stream()
                                .filter(row -> row.method().equals(method.name()))
                                .map(row -> new Interpolation.Point(row.resistivity(), row.factor()))
                                .toList(),
                        resistivity,
                        "IEC 60364-5-52 soil factor",
                        "soil resistivity",
                        "K·m/W");
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

    /** {@return factor of loaded circuits side by side, by the method} Tabled for one to twenty. */
    public static Answer grouping(ReferenceMethod method, int circuits) {
        Physical.within("circuits", circuits, 1, Integer.MAX_VALUE);
        return !method.buried()
                ? grouping(circuits)
                : BURIED.rows().stream()
                        .filter(row -> row.method().equals(method.name()) && row.circuits() >= circuits)
                        .findFirst()
                        .map(row -> Answer.of(row.factor()))
                        .orElseGet(() -> Answer.outside(
                                "IEC 60364-5-52 buried grouping factor", "grouped circuits", circuits, 1, 20, "1"));
    }

    /** {@return the product of all, or the first that has no answer} */
    static Answer all(CableLaying laying) {
        double product = 1;
        for (Answer factor : List.of(
                laying.method().buried()
                        ? ground(laying.insulation(), laying.ambient())
                        : ambient(laying.insulation(), laying.ambient()),
                grouping(laying.method(), laying.groupedCircuits()),
                soil(laying.method(), laying.soilResistivity()))) {
            if (!(factor instanceof Answer.Value value)) {
                return factor;
            }
            product *= value.value();
        }
        return Answer.of(product);
    }
}
