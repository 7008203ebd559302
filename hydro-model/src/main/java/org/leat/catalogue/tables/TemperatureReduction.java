package org.leat.catalogue.tables;

import java.util.List;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Share fT of the pressure rating at 20 °C that a plastic pipe keeps at the temperature of its wall; straight lines
 * between the points of {@code temperature-reduction.csv}. Below the table no bonus is given (1); above it there is no
 * number: {@link Answer.Outside}, polyethylene above 40 °C (ISO) or 50 °C (Australian), PVC-U above 45 °C.
 *
 * <p>Source: as {@link TemperatureTradition} names. The temperature is the wall's: an empty black pipe in the sun reaches
 * 50 to 60 °C (common practice).
 */
public final class TemperatureReduction {

    private static final double CELSIUS = 273.15;
    private static final LazyTable<Row> ROWS = LazyTable.of("temperature-reduction", Row.class);

    private TemperatureReduction() {}

    private record Row(String tradition, double temperature, double factor) {}

    /** {@return fT}
     *
     * @param wallTemperature K
     */
    public static Answer factor(TemperatureTradition tradition, double wallTemperature) {
        Physical.positive("wallTemperature", wallTemperature);
        List<Interpolation.Point> curve = ROWS.rows().stream()
                .filter(row -> row.tradition().equals(tradition.row()))
                .map(row -> new Interpolation.Point(row.temperature() + CELSIUS, row.factor()))
                .toList();
        if (wallTemperature <= curve.get(0).x()) {
            return Answer.of(1);
        }
        double high = curve.get(curve.size() - 1).x();
        if (wallTemperature > high) {
            return Answer.outside(
                    "pressure reduction, " + tradition.source(), "wallTemperature", wallTemperature, 0, high, "K");
        }
        return Answer.of(Interpolation.at(curve, wallTemperature));
    }

    /**
     * {@return the lowest fT of several traditions: where two disagree, or pipe and fittings do, the lower holds} Outside where one
     * of them is.
     */
    public static Answer lowest(List<TemperatureTradition> traditions, double wallTemperature) {
        double lowest = 1;
        for (TemperatureTradition each : traditions) {
            Answer factor = factor(each, wallTemperature);
            if (!(factor instanceof Answer.Value value)) {
                return factor;
            }
            lowest = Math.min(lowest, value.value());
        }
        return Answer.of(lowest);
    }

    /** {@return fT of joints and fittings: polyethylene as the pipe by both traditions, PVC-U by the chart with fittings; 1 for others} */
    public static Answer joints(PipeMaterial material, double wallTemperature) {
        return lowest(
                switch (material) {
                    case PE80, PE100 ->
                        List.of(TemperatureTradition.POLYETHYLENE_ISO, TemperatureTradition.POLYETHYLENE_AUSTRALIAN);
                    case PVC_U -> List.of(TemperatureTradition.PVC_U_FITTINGS);
                    default -> List.of();
                },
                wallTemperature);
    }
}
