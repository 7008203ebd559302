package org.leat.plant.numbers;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.tables.MaterialData;
import org.leat.catalogue.tables.MaterialProperty;
import org.leat.design.ElementPath;
import org.leat.hydraulics.AirPocketFlushing;
import org.leat.hydraulics.ThermalLengthChange;
import org.leat.law.Answer;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;

/**
 * One section of the penstock, in SI.
 *
 * @param name as in the design
 * @param pipe its pipe
 * @param length along the pipe, m
 * @param fromElevation of the upper end above the nozzle axis, m
 * @param toElevation of the lower end above the nozzle axis, m
 * @param lossCoefficient of all its fittings on its bore
 * @param highestWallTemperature of the standing pipe on the hottest day, K
 * @param waveSpeed of pressure, cold, anchored against movement along the pipe, m/s
 * @param valves shut by hand
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record SectionNumbers(
        String name,
        PipeNumbers pipe,
        double length,
        double fromElevation,
        double toElevation,
        double lossCoefficient,
        double highestWallTemperature,
        Amount waveSpeed,
        List<ValveNumbers> valves)
        implements SectionNumbersBuilder.With {

    public SectionNumbers {
        valves = List.copyOf(valves);
    }

    /** {@return what the wall is made of; null for a pipe of one's own} */
    public @Nullable PipeMaterial material() {
        return pipe.material();
    }

    /** {@return m} */
    public double outsideDiameter() {
        return pipe.outsideDiameter();
    }

    /** {@return wall for strength, m} */
    public double leastWall() {
        return pipe.leastWall();
    }

    /** {@return inside diameter for losses (mean wall), m} */
    public double bore() {
        return pipe.bore();
    }

    /** {@return inside diameter at the least wall, m} */
    public double boreForStrength() {
        return pipe.outsideDiameter() - 2 * pipe.leastWall();
    }

    /** {@return sand-grain roughness, m} */
    public double roughness() {
        return pipe.roughness();
    }

    /** {@return working pressure at 20 °C, Pa} */
    public Amount rating() {
        return pipe.strength().rating();
    }

    /** {@return working pressure at {@link #highestWallTemperature}, Pa} */
    public Amount ratingHot() {
        return pipe.strength().ratingHot();
    }

    /** {@return pressure allowed for a surge at {@link #highestWallTemperature}, Pa} */
    public Amount surgeRatingHot() {
        return ratingHot().times(pipe.strength().surgeFactor());
    }

    /** {@return modulus of the wall for a fast change in the warmest time, when it folds soonest, Pa} */
    public Amount modulusWhenWarm() {
        return pipe.stiffness().whenWarm();
    }

    /** {@return modulus of the wall for a fast change in cold water, when the wave is fastest, Pa} */
    public Amount modulus() {
        return pipe.stiffness().modulus();
    }

    /** {@return modulus of the wall under standing load, Pa} */
    public Amount longTermModulus() {
        return pipe.stiffness().longTermModulus();
    }

    /** {@return of the wall} */
    public double poissonRatio() {
        return pipe.stiffness().poissonRatio();
    }

    /** {@return area of the bore, m²} */
    public double area() {
        return Math.PI / 4 * bore() * bore();
    }

    /**
     * {@return least velocity that carries air down its fall, m/s; it slopes evenly between its ends} Outside the range of
     * {@link AirPocketFlushing} the reason.
     */
    public Answer airFlushingVelocity() {
        return AirPocketFlushing.leastVelocity(bore(), Math.asin(Math.min(1, (fromElevation - toElevation) / length)));
    }

    /**
     * {@return free change of its length with a change of temperature, K, in m} A pipe of one's own is taken as polyethylene,
     * which grows most; hose takes up its own.
     */
    public double lengthChange(double temperatureChange) {
        PipeMaterial of = material() == null ? PipeMaterial.PE100 : material();
        return of == PipeMaterial.HOSE
                ? 0
                : ThermalLengthChange.free(
                        MaterialData.usual(of, MaterialProperty.THERMAL_EXPANSION), length, temperatureChange);
    }

    /** {@return the elevation of its lower-lying end, m} */
    public double lowestElevation() {
        return Math.min(fromElevation, toElevation);
    }

    /** {@return the path of the section in the design} */
    public String path() {
        return ElementPath.named("/penstock/sections", name, 0);
    }

    /**
     * Pipe of a section, in SI: what it takes from its marks alone.
     *
     * @param material what the wall is made of; null for a pipe of one's own
     * @param outsideDiameter m
     * @param leastWall wall for strength, m
     * @param bore inside diameter for losses (mean wall), m
     * @param roughness sand-grain, m
     * @param strength pressures it stands
     * @param stiffness of its wall
     */
    @Withers
    public record PipeNumbers(
            @Nullable PipeMaterial material,
            double outsideDiameter,
            double leastWall,
            double bore,
            double roughness,
            Strength strength,
            Stiffness stiffness)
            implements SectionNumbersPipeNumbersBuilder.With {

        /**
         * Pressures that the pipe stands.
         *
         * @param rating working pressure at 20 °C, Pa
         * @param ratingHot working pressure at the highest temperature of the wall, Pa
         * @param surgeFactor pressure allowed for a surge over the working pressure
         */
        public record Strength(Amount rating, Amount ratingHot, double surgeFactor) {}

        /**
         * Stiffness of the wall.
         *
         * @param modulus for a fast change, in cold water, Pa
         * @param whenWarm for a fast change, at the highest temperature of the wall, Pa
         * @param longTermModulus under standing load, at the highest temperature of the wall, Pa
         * @param poissonRatio of the wall
         */
        public record Stiffness(Amount modulus, Amount whenWarm, Amount longTermModulus, double poissonRatio) {}
    }
}
