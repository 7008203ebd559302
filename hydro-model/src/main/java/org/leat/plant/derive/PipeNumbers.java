package org.leat.plant.derive;

import org.jspecify.annotations.Nullable;
import org.leat.catalogue.PipeMaterial;
import org.leat.plant.numbers.Amount;

/**
 * What a section takes from its pipe alone.
 *
 * @param material null for a pipe of one's own
 * @param outsideDiameter m
 * @param leastWall m
 * @param bore for losses, m
 * @param rating at 20 °C, Pa
 * @param ratingHot at the highest wall temperature, Pa
 * @param surgeFactor pressure allowed for a surge over the rating
 * @param modulus fast, in cold water, Pa
 * @param longTermModulus at the highest wall temperature, Pa
 * @param poissonRatio of the wall
 * @param roughness m
 */
record PipeNumbers(
        @Nullable PipeMaterial material,
        double outsideDiameter,
        double leastWall,
        double bore,
        Amount rating,
        Amount ratingHot,
        double surgeFactor,
        Amount modulus,
        Amount longTermModulus,
        double poissonRatio,
        double roughness) {}
