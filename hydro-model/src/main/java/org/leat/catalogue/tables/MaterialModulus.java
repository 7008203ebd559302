package org.leat.catalogue.tables;

import java.util.List;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Elastic modulus of a pipe wall by the duration of the load and the temperature of the wall: {@code E(T) = E(20 °C)
 * k(T)}, with k from {@code modulus-temperature.csv} (PPI Handbook of PE Pipe, ch. 3 appendix B, for polyethylene).
 * Temperatures in K; polyethylene −7 to 60 °C, PVC-U −5 to 60 °C, steel −30 to 100 °C, {@link Answer.Outside} beyond.
 * Hose takes the curve of PVC-U (common practice).
 */
public final class MaterialModulus {

    private static final double CELSIUS = 273.15;
    private static final LazyTable<Row> ROWS = LazyTable.of("modulus-temperature", Row.class);

    private MaterialModulus() {}

    private record Row(String family, double temperature, double factor) {}

    /** {@return Pa, under a load of minutes} */
    public static Answer shortTerm(PipeMaterial material, double temperature) {
        return at(material, temperature, MaterialData.usual(material, MaterialProperty.MODULUS_SHORT));
    }

    /** {@return Pa, after 50 years of load} */
    public static Answer longTerm(PipeMaterial material, double temperature) {
        return at(material, temperature, MaterialData.usual(material, MaterialProperty.MODULUS_LONG));
    }

    /** {@return Pa, under a surge of seconds: stiffer than any slow test, stiffest in cold water} */
    public static Answer dynamic(PipeMaterial material, double temperature) {
        double atTwenty = MaterialData.usual(material, MaterialProperty.MODULUS_SHORT)
                * MaterialData.usual(material, MaterialProperty.DYNAMIC_FACTOR);
        return at(material, temperature, atTwenty);
    }

    private static Answer at(PipeMaterial material, double temperature, double atTwenty) {
        Physical.positive("temperature", temperature);
        List<Interpolation.Point> curve = ROWS.rows().stream()
                .filter(row -> row.family().equals(material.family()))
                .map(row -> new Interpolation.Point(row.temperature() + CELSIUS, row.factor()))
                .toList();
        double low = curve.get(0).x();
        double high = curve.get(curve.size() - 1).x();
        if (temperature < low || temperature > high) {
            return Answer.outside("modulus of " + material.label(), "wallTemperature", temperature, low, high, "K");
        }
        return Answer.of(atTwenty * Interpolation.at(curve, temperature) / Interpolation.at(curve, 20 + CELSIUS));
    }
}
