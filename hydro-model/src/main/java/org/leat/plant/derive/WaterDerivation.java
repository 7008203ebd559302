package org.leat.plant.derive;

import org.jspecify.annotations.Nullable;
import org.leat.design.TemperatureRange;
import org.leat.hydraulics.WallRestraint;
import org.leat.hydraulics.WaterProperties;
import org.leat.hydraulics.WaveSpeed;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers.PipeNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.quantity.Celsius;
import org.leat.quantity.Si;

/** What follows for a design from the temperature of its water. */
final class WaterDerivation {

    private WaterDerivation() {}

    /** {@return whether the laws know water over a whole range of temperature} */
    static boolean liquid(@Nullable TemperatureRange range) {
        return range == null
                || (Celsius.of(Si.of(range.lowest())) >= WaterProperties.COLDEST
                        && Celsius.of(Si.of(range.highest())) <= WaterProperties.HOTTEST);
    }

    /**
     * {@return wave speed in a pipe held against movement along its axis, m/s} Bore and wall are of one set of dimensions, the mean
     * ones: the least wall with the mean bore would be a pipe that nobody makes, and too soft.
     */
    static Amount waveSpeed(PipeNumbers pipe, WaterNumbers water) {
        if (!(pipe.stiffness().modulus() instanceof Amount.Known modulus)) {
            return pipe.stiffness().modulus();
        }
        return Amount.of(WaveSpeed.thickWall(
                water.bulkModulus(),
                water.density(),
                modulus.value(),
                pipe.stiffness().poissonRatio(),
                pipe.bore(),
                (pipe.outsideDiameter() - pipe.bore()) / 2,
                WallRestraint.NO_AXIAL_MOVEMENT));
    }
}
