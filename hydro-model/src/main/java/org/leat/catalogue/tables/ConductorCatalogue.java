package org.leat.catalogue.tables;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.leat.design.ConductorMaterial;
import org.leat.design.Stranding;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Greatest direct-current resistance of conductors at 20 °C, IEC 60228:2004, class 2 (stranded) and class 5 (flexible) of
 * plain copper, class 2 of aluminium, from {@code conductors.csv}. Areas in m², resistances in Ω/m.
 *
 * <p>An area between two of the standard's (an American gauge, a measured wire) is taken to be made of the poorer of the
 * two neighbours' metal: the greater of their resistance times area, over the area, and no more
 * than the smaller neighbour's resistance [common practice]. Outside the least
 * and greatest area of a class, and for flexible aluminium, which the standard does not know, there is no answer.
 */
public final class ConductorCatalogue {

    private static final String LAW = "IEC 60228 conductor resistance";
    private static final double ALIKE = 1e-3;
    private static final LazyTable<Row> ROWS = LazyTable.of("conductors", Row.class);

    private ConductorCatalogue() {}

    private record Row(String material, String stranding, double area, double resistance) {
        double squareMetres() {
            return area / 1e6;
        }

        double perMetre() {
            return resistance / 1000;
        }
    }

    /** {@return areas of the standard, m², rising; empty for flexible aluminium} */
    public static List<Double> areas(ConductorMaterial material, Stranding stranding) {
        return rows(material, stranding).stream().map(Row::squareMetres).toList();
    }

    /** {@return resistance at 20 °C of one core of an area, m², in Ω/m} */
    public static Answer resistance(ConductorMaterial material, Stranding stranding, double area) {
        Physical.positive("area", area);
        List<Row> rows = rows(material, stranding);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (Math.abs(area / row.squareMetres() - 1) <= ALIKE) {
                return Answer.of(row.perMetre());
            }
            if (i > 0 && area < row.squareMetres()) {
                Row smaller = rows.get(i - 1);
                double poorer =
                        Math.max(smaller.perMetre() * smaller.squareMetres(), row.perMetre() * row.squareMetres());
                return Answer.of(Math.min(smaller.perMetre(), poorer / area));
            }
        }
        double low = rows.isEmpty() ? 0 : rows.get(0).squareMetres();
        double high = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).squareMetres();
        return Answer.outside(LAW, "area", area, low, high, "m²");
    }

    /**
     * {@return the least area of the standard, m², that keeps a drop} Outside, with the drop of the greatest conductor as
     * value, where none does.
     *
     * @param drop the drop that a resistance at 20 °C, Ω/m, makes on this run (voltage, power or a share), rising with it
     * @param permitted in the unit of the drop
     */
    public static Answer smallestForDrop(
            ConductorMaterial material, Stranding stranding, DoubleUnaryOperator drop, double permitted) {
        Physical.positive("permitted drop", permitted);
        double least = Double.NaN;
        for (Row row : rows(material, stranding)) {
            least = drop.applyAsDouble(row.perMetre());
            if (least <= permitted) {
                return Answer.of(row.squareMetres());
            }
        }
        return Answer.outside(LAW, "drop of the greatest conductor", least, 0, permitted, "1");
    }

    private static List<Row> rows(ConductorMaterial material, Stranding stranding) {
        return ROWS.rows().stream()
                .filter(row ->
                        row.material().equals(key(material)) && row.stranding().equals(key(stranding)))
                .toList();
    }

    private static String key(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT);
    }
}
