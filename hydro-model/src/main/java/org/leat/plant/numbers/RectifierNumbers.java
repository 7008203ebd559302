package org.leat.plant.numbers;

import org.jspecify.annotations.Nullable;

/**
 * Diode bridge, in SI.
 *
 * @param threshold part of one diode's drop that does not depend on the current, V
 * @param slopeResistance of one diode, Ω
 * @param reverseVoltageRating repetitive peak of each diode, V; null where not stated
 * @param averageCurrentRating of the whole bridge, A; null where not stated
 * @param capacitorVoltageRating V; null where no capacitor or no rating is stated
 * @param capacitance across the output, F; zero where none is stated
 */
@Withers
public record RectifierNumbers(
        double threshold,
        double slopeResistance,
        @Nullable Double reverseVoltageRating,
        @Nullable Double averageCurrentRating,
        @Nullable Double capacitorVoltageRating,
        double capacitance)
        implements RectifierNumbersBuilder.With {}
