package org.leat.plant.numbers;

import org.apiguardian.api.API;

/**
 * Diode bridge, in SI.
 *
 * @param threshold part of one diode's drop that does not depend on the current, V
 * @param slopeResistance of one diode, Ω
 * @param reverseVoltageRating repetitive peak of each diode, V
 * @param averageCurrentRating of the whole bridge, A
 * @param capacitorVoltageRating V
 * @param capacitance across the output, F; zero where none is stated
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record RectifierNumbers(
        double threshold,
        double slopeResistance,
        Amount reverseVoltageRating,
        Amount averageCurrentRating,
        Amount capacitorVoltageRating,
        double capacitance)
        implements RectifierNumbersBuilder.With {}
