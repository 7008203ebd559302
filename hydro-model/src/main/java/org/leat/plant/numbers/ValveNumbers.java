package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.ShutOff;

/**
 * A valve that stops the water, in SI.
 *
 * @param kind of valve; of a kind that is not stated the one that stops the flow in the least of its travel
 * @param closingTime of its whole travel by hand, s
 * @param bore m
 * @param path of the closing time in the design; null where it is taken, not stated
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record ValveNumbers(
        ShutOff kind,
        double closingTime,
        double bore,
        @Nullable String path) {}
