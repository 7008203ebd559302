package org.leat.plant.numbers;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.PipeMaterial;
import org.leat.design.ElementPath;

/**
 * One section of the penstock, in SI.
 *
 * @param name as in the design
 * @param material what the wall is made of; null for a pipe of one's own
 * @param outsideDiameter m
 * @param leastWall wall for strength, m
 * @param bore inside diameter for losses (mean wall), m
 * @param boreForStrength inside diameter at the least wall, m
 * @param length along the pipe, m
 * @param roughness sand-grain, m
 * @param fromElevation of the upper end above the nozzle axis, m
 * @param toElevation of the lower end above the nozzle axis, m
 * @param lossCoefficient of all its fittings on its bore
 * @param rating working pressure at 20 °C, Pa
 * @param ratingHot working pressure at {@code highestWallTemperature}, Pa
 * @param surgeRatingHot pressure allowed for a surge at {@code highestWallTemperature}, Pa
 * @param highestWallTemperature of the standing pipe on the hottest day, K
 * @param modulus of the wall for a fast change, Pa
 * @param longTermModulus of the wall under standing load, Pa
 * @param poissonRatio of the wall
 * @param waveSpeed of pressure, cold, anchored against movement along the pipe, m/s
 * @param valves shut by hand
 */
public record SectionNumbers(
        String name,
        @Nullable PipeMaterial material,
        double outsideDiameter,
        double leastWall,
        double bore,
        double boreForStrength,
        double length,
        double roughness,
        double fromElevation,
        double toElevation,
        double lossCoefficient,
        Amount rating,
        Amount ratingHot,
        Amount surgeRatingHot,
        double highestWallTemperature,
        Amount modulus,
        Amount longTermModulus,
        double poissonRatio,
        Amount waveSpeed,
        List<ValveNumbers> valves) {

    public SectionNumbers {
        valves = List.copyOf(valves);
    }

    /** {@return area of the bore, m²} */
    public double area() {
        return Math.PI / 4 * bore * bore;
    }

    /** {@return the elevation of its lower-lying end, m} */
    public double lowestElevation() {
        return Math.min(fromElevation, toElevation);
    }

    /** {@return the path of the section in the design} */
    public String path() {
        return ElementPath.named("/penstock/sections", name, 0);
    }
}
