package org.leat.catalogue.tables;

import java.util.Optional;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.Spread;

/** Properties of pipe materials at 20 °C, from {@code pipe-materials.csv}. */
public final class MaterialData {

    private static final LazyTable<Row> ROWS = LazyTable.of("pipe-materials", Row.class);

    private MaterialData() {}

    private record Row(String material, String property, double low, double usual, double high, String source) {}

    /** {@return the property with its range, in SI; empty where it means nothing for the material} */
    public static Optional<Spread> find(PipeMaterial material, MaterialProperty property) {
        String column = property.column();
        return ROWS.rows().stream()
                .filter(row -> row.material().equals(material.label())
                        && row.property().equals(column))
                .map(row -> new Spread(row.low(), row.usual(), row.high(), row.source()).times(property.toSi()))
                .findFirst();
    }

    /** {@return the property's usual value, in SI} Throws where it means nothing for the material. */
    public static double usual(PipeMaterial material, MaterialProperty property) {
        return find(material, property)
                .orElseThrow(() -> new IllegalArgumentException(material + " has no " + property))
                .usual();
    }
}
