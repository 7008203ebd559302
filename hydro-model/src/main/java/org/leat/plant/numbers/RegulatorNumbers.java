package org.leat.plant.numbers;

import org.jspecify.annotations.Nullable;
import org.leat.design.RegulatorKind;

/**
 * Charge regulator, in SI.
 *
 * @param kind what it does when the battery is full; {@code NONE} where the design has none
 * @param windowFrom least input voltage at which it tracks, V; only read for a tracking one
 * @param windowTo greatest input voltage at which it tracks, V; only read for a tracking one
 * @param efficiency input to output; one unless it tracks
 * @param currentRating output, A; null where not stated
 * @param inputVoltageLimit V; null where not stated
 * @param equalisingVoltage set point of the whole bank, V; null where it is not used
 */
@Withers
public record RegulatorNumbers(
        RegulatorKind kind,
        double windowFrom,
        double windowTo,
        double efficiency,
        @Nullable Double currentRating,
        @Nullable Double inputVoltageLimit,
        @Nullable Double equalisingVoltage)
        implements RegulatorNumbersBuilder.With {

    /** {@return a tracking regulator with a window, without other limits} */
    public static RegulatorNumbers tracking(double windowFrom, double windowTo, double efficiency) {
        return new RegulatorNumbers(RegulatorKind.TRACKING, windowFrom, windowTo, efficiency, null, null, null);
    }

    /** {@return the same regulator, what its input stands left out} */
    public RegulatorNumbers withoutInputLimit() {
        return withInputVoltageLimit(null);
    }
}
