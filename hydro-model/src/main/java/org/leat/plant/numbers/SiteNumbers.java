package org.leat.plant.numbers;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.quantity.Celsius;

/**
 * Site, in SI.
 *
 * @param grossHead intake water level to nozzle axis, m
 * @param grossHeadPlusMinus its tolerance, m; zero where none is known
 * @param altitude above the sea, m
 * @param atmosphericPressure at that altitude, Pa
 * @param temperatures of water and air over the year
 * @param flows what the stream brings
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record SiteNumbers(
        double grossHead,
        double grossHeadPlusMinus,
        double altitude,
        double atmosphericPressure,
        Temperatures temperatures,
        StreamNumbers flows)
        implements SiteNumbersBuilder.With {

    /** Head below which no jet is worth solving, m: the least a design may state. */
    private static final double LEAST_HEAD = 0.01;

    /**
     * Temperatures of the year.
     *
     * @param lowestWater K
     * @param highestWater K
     * @param lowestAir K
     * @param highestAir K
     */
    @Withers
    public record Temperatures(double lowestWater, double highestWater, double lowestAir, double highestAir)
            implements SiteNumbersTemperaturesBuilder.With {}

    /** {@return whether the air falls below the freezing point of water} */
    public boolean frost() {
        return temperatures.lowestAir() < Celsius.toKelvin(0);
    }

    /** {@return K} */
    public double lowestWaterTemperature() {
        return temperatures.lowestWater();
    }

    /** {@return K} */
    public double highestWaterTemperature() {
        return temperatures.highestWater();
    }

    /** {@return K} */
    public double lowestAirTemperature() {
        return temperatures.lowestAir();
    }

    /** {@return K} */
    public double highestAirTemperature() {
        return temperatures.highestAir();
    }

    /** {@return flow of the stream, most water first; empty where the design does not state it or cannot be read} */
    public List<StreamLevel> stream() {
        return flows.levels();
    }

    /** {@return residual flow, m³/s; zero where none is stated} */
    public double keptInStream() {
        return flows.kept();
    }

    /** {@return share of the year in which the pipe must stay full} */
    public double fullPipeShare() {
        return flows.fullPipeShare();
    }

    /** {@return why readings of the stream give no flow; null where they do or there are none} */
    public Amount.@Nullable Unknown streamUnknown() {
        return flows.unknown();
    }

    /** {@return whether there is a fall: readings may give none, or next to none} */
    public boolean falls() {
        return grossHead >= LEAST_HEAD;
    }
}
