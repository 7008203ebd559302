package org.leat.catalogue.tables;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.leat.design.Making;

/**
 * A material of runners at 23 °C, from {@code runner-materials.csv}: a scale to reckon with, a test bar goes before.
 *
 * @param name as design files name it
 * @param making how the part is made
 * @param density kg/m³
 * @param strengthAlong tensile strength along printed layers, Pa
 * @param strengthAcross tensile strength across printed layers, Pa; the same where there are none
 * @param feedstockStrength of the filament as makers quote it, Pa; absent where not tabled
 * @param modulusAlong along layers, Pa
 * @param modulusAcross across layers, Pa
 * @param deflectionLow heat deflection temperature at 0.45 MPa, K; absent for metals
 * @param deflectionHigh heat deflection temperature at 1.8 MPa, K; absent where not tabled
 * @param waterUptake mass fraction at saturation
 * @param wetFactor strength saturated with water over as tabled
 * @param fatigueRatio fatigue over static strength
 * @param fatigueCycles at which that holds
 * @param sunProof holds in sunlight without paint
 * @param source who published it, or "common practice"
 */
public record RunnerMaterial(
        String name,
        Making making,
        double density,
        double strengthAlong,
        double strengthAcross,
        OptionalDouble feedstockStrength,
        double modulusAlong,
        double modulusAcross,
        OptionalDouble deflectionLow,
        OptionalDouble deflectionHigh,
        double waterUptake,
        double wetFactor,
        double fatigueRatio,
        double fatigueCycles,
        boolean sunProof,
        String source) {

    private static final LazyTable<RunnerMaterial> ALL =
            LazyTable.of("runner-materials", RunnerMaterial.class, RunnerMaterial::inSi);

    /** {@return every material tabled, in the table's order} */
    public static List<RunnerMaterial> all() {
        return ALL.rows();
    }

    /** {@return the material of this name; empty where none is tabled} */
    public static Optional<RunnerMaterial> find(String name) {
        return ALL.rows().stream()
                .filter(row -> row.name.equalsIgnoreCase(name))
                .findFirst();
    }

    private RunnerMaterial inSi() {
        return new RunnerMaterial(
                name,
                making,
                density,
                strengthAlong * 1e6,
                strengthAcross * 1e6,
                changed(feedstockStrength, megapascals -> megapascals * 1e6),
                modulusAlong * 1e6,
                modulusAcross * 1e6,
                changed(deflectionLow, celsius -> celsius + 273.15),
                changed(deflectionHigh, celsius -> celsius + 273.15),
                waterUptake,
                wetFactor,
                fatigueRatio,
                fatigueCycles,
                sunProof,
                source);
    }

    private static OptionalDouble changed(OptionalDouble tabled, DoubleUnaryOperator toSi) {
        return tabled.isPresent() ? OptionalDouble.of(toSi.applyAsDouble(tabled.getAsDouble())) : tabled;
    }
}
