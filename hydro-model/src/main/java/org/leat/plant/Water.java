package org.leat.plant;

import org.jspecify.annotations.Nullable;
import org.leat.design.TemperatureRange;
import org.leat.hydraulics.WallRestraint;
import org.leat.hydraulics.WaterProperties;
import org.leat.hydraulics.WaveSpeed;
import org.leat.quantity.Si;

/** Water at a temperature, and what follows from it for a design. */
final class Water {

    private Water() {}

    /** {@return water at a temperature, K; beyond what is liquid the nearest the laws know} */
    static WaterNumbers at(double kelvin) {
        double celsius = Math.min(Math.max(Celsius.of(kelvin), WaterProperties.COLDEST), WaterProperties.HOTTEST);
        return new WaterNumbers(
                Celsius.toKelvin(celsius),
                WaterProperties.density(celsius),
                WaterProperties.dynamicViscosity(celsius),
                WaterProperties.vapourPressure(celsius),
                WaterProperties.isentropicBulkModulus(celsius));
    }

    /** {@return whether the laws know water over a whole range of temperature} */
    static boolean liquid(@Nullable TemperatureRange range) {
        return range == null
                || (Celsius.of(Si.of(range.lowest())) >= WaterProperties.COLDEST
                        && Celsius.of(Si.of(range.highest())) <= WaterProperties.HOTTEST);
    }

    /** {@return wave speed in a pipe held against movement along its axis, m/s} */
    static Amount waveSpeed(PipeNumbers pipe, WaterNumbers water) {
        if (!(pipe.modulus() instanceof Amount.Known modulus)) {
            return pipe.modulus();
        }
        return Amount.of(WaveSpeed.thickWall(
                water.bulkModulus(),
                water.density(),
                modulus.value(),
                pipe.poissonRatio(),
                pipe.bore(),
                pipe.leastWall(),
                WallRestraint.NO_AXIAL_MOVEMENT));
    }
}
