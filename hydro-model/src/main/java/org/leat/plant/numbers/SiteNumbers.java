package org.leat.plant.numbers;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Site, in SI.
 *
 * @param grossHead intake water level to nozzle axis, m
 * @param grossHeadPlusMinus its tolerance, m; zero where none is known
 * @param altitude above the sea, m
 * @param atmosphericPressure at that altitude, Pa
 * @param lowestWaterTemperature K
 * @param highestWaterTemperature K
 * @param lowestAirTemperature K
 * @param highestAirTemperature K
 * @param stream flow of the stream, most water first; empty where the design does not state it or cannot be read
 * @param keptInStream residual flow, m³/s; zero where none is stated
 * @param fullPipeShare share of the year in which the pipe must stay full
 * @param streamUnknown why readings of the stream give no flow; null where they do or there are none
 */
public record SiteNumbers(
        double grossHead,
        double grossHeadPlusMinus,
        double altitude,
        double atmosphericPressure,
        double lowestWaterTemperature,
        double highestWaterTemperature,
        double lowestAirTemperature,
        double highestAirTemperature,
        List<StreamLevel> stream,
        double keptInStream,
        double fullPipeShare,
        Amount.@Nullable Unknown streamUnknown) {
    public SiteNumbers {
        stream = List.copyOf(stream);
    }
}
