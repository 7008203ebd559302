package org.leat.plant.numbers;

import org.jspecify.annotations.Nullable;
import org.leat.hydraulics.ValveKind;

/**
 * A valve that stops the water, in SI.
 *
 * @param kind of valve; of a kind that is not stated the one that stops the flow in the least of its travel
 * @param closingTime of its whole travel by hand, s
 * @param bore m
 * @param path of the closing time in the design; null where it is taken, not stated
 */
@SuppressWarnings("exports") // a law's own type: for the rules of this project
public record ValveNumbers(
        ValveKind kind,
        double closingTime,
        double bore,
        @Nullable String path) {}
