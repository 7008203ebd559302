package org.leat.catalogue.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.PlasticPipe;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Sizes of plastic pressure pipe as their standards table them: walls by {@link PreferredWall}, ratings by
 * {@link PressureRating}. Diameters in m, pressures in Pa, temperatures in K. Source: ISO 4427-2, ISO 1452-2, DIN 8074,
 * DIN 8062, ISO 4065.
 */
public final class PipeCatalogue {

    private static final double MM = 1e-3;
    private static final LazyTable<Size> SIZES = LazyTable.of("plastic-pipe-sizes", Size.class);

    private PipeCatalogue() {}

    private record Size(String standard, double outsideDiameter) {}

    /** {@return polyethylene pipe to ISO 4427 of an outside diameter, m, and an SDR as marked} */
    public static PlasticPipe polyethylene(PipeMaterial grade, double outsideDiameter, double sdr) {
        return pipe(PipeStandard.ISO_4427, grade, outsideDiameter, sdr);
    }

    /** {@return PVC-U pipe to ISO 1452 of an outside diameter, m, and a PN, Pa; empty where none carries that name} */
    public static Optional<PlasticPipe> pvcU(double outsideDiameter, double nominalPressure) {
        return ofRating(PipeStandard.ISO_1452, PipeMaterial.PVC_U, outsideDiameter, nominalPressure);
    }

    /** {@return the pipe of a standard, by outside diameter, m, and SDR as marked} */
    public static PlasticPipe pipe(PipeStandard standard, PipeMaterial material, double outsideDiameter, double sdr) {
        double strength = MaterialData.usual(material, MaterialProperty.MINIMUM_REQUIRED_STRENGTH);
        double pressure = PressureRating.calculated(strength, designCoefficient(standard, outsideDiameter), sdr);
        return new PlasticPipe(
                standard,
                material,
                sdr,
                PressureRating.nominal(pressure),
                PreferredWall.dimensions(standard, outsideDiameter, sdr));
    }

    /** {@return the thinnest pipe of a standard that carries a nominal pressure, Pa; empty where none does} */
    public static Optional<PlasticPipe> ofRating(
            PipeStandard standard, PipeMaterial material, double outsideDiameter, double nominalPressure) {
        return series(standard, material, outsideDiameter).stream()
                .filter(pipe -> Math.abs(pipe.nominalPressure() / nominalPressure - 1) < 1e-3)
                .findFirst();
    }

    /** {@return overall design coefficient C of the standard for an outside diameter, m} */
    public static double designCoefficient(PipeStandard standard, double outsideDiameter) {
        return StandardRow.of(standard, outsideDiameter / MM).designCoefficient();
    }

    /** {@return nominal outside diameters, m, rising} */
    public static List<Double> sizes(PipeStandard standard) {
        return SIZES.rows().stream()
                .filter(size -> size.standard().equals(standard.title()))
                .map(size -> size.outsideDiameter() / 1000)
                .toList();
    }

    /** {@return every pipe of one outside diameter, thinnest wall first} */
    public static List<PlasticPipe> series(PipeStandard standard, PipeMaterial material, double outsideDiameter) {
        return PreferredWall.ratios().stream()
                .sorted(Comparator.reverseOrder())
                .map(sdr -> pipe(standard, material, outsideDiameter, sdr))
                .toList();
    }

    /**
     * {@return the pipes of one outside diameter that hold a pressure for 50 years, thinnest first} Empty where none does,
     * and where the wall is hotter than the tradition's table.
     *
     * @param pressure Pa, above the atmosphere
     * @param wallTemperature K
     */
    public static List<PlasticPipe> holding(
            PipeStandard standard,
            PipeMaterial material,
            double outsideDiameter,
            double pressure,
            double wallTemperature,
            TemperatureTradition tradition) {
        Physical.notNegative("pressure", pressure);
        if (!(TemperatureReduction.factor(tradition, wallTemperature) instanceof Answer.Value factor)) {
            return List.of();
        }
        return series(standard, material, outsideDiameter).stream()
                .filter(pipe -> PressureRating.allowable(pipe.nominalPressure(), factor.value(), 1) >= pressure)
                .toList();
    }

    /** {@return the first of {@link #holding}} */
    public static Optional<PlasticPipe> thinnestThatHolds(
            PipeStandard standard,
            PipeMaterial material,
            double outsideDiameter,
            double pressure,
            double wallTemperature,
            TemperatureTradition tradition) {
        return holding(standard, material, outsideDiameter, pressure, wallTemperature, tradition).stream()
                .findFirst();
    }
}
