package org.leat.plant.numbers;

import org.jspecify.annotations.Nullable;
import org.leat.design.DumpSide;

/**
 * Dump load, in SI.
 *
 * @param resistanceCold all elements together, Ω
 * @param resistanceHot at working temperature, Ω
 * @param powerRating W; null where not stated
 * @param triggerVoltage at which it is switched on, V; null where not stated
 * @param side of the battery's fuse; null where not stated
 */
@Withers
public record DumpLoadNumbers(
        double resistanceCold,
        double resistanceHot,
        @Nullable Double powerRating,
        @Nullable Double triggerVoltage,
        @Nullable DumpSide side)
        implements DumpLoadNumbersBuilder.With {}
