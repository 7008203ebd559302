package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.PipeMaterial;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record PipeNumbers(
        @Nullable PipeMaterial material,
        double outsideDiameter,
        double leastWall,
        double bore,
        double roughness,
        Strength strength,
        Stiffness stiffness)
        implements PipeNumbersBuilder.With {

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
     * @param longTermModulus under standing load, at the highest temperature of the wall, Pa
     * @param poissonRatio of the wall
     */
    public record Stiffness(Amount modulus, Amount longTermModulus, double poissonRatio) {}
}
