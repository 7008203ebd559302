package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.DumpSide;
import org.leat.electrics.DumpElement;

/**
 * Dump load, in SI.
 *
 * @param resistanceCold all elements together, Ω
 * @param resistanceHot at working temperature, Ω
 * @param powerRating W
 * @param triggerVoltage at which it is switched on, V
 * @param side of the battery's fuse; null where not stated
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record DumpLoadNumbers(
        double resistanceCold,
        double resistanceHot,
        Amount powerRating,
        Amount triggerVoltage,
        @Nullable DumpSide side) implements DumpLoadNumbersBuilder.With {

    /** {@return power of the cold elements at a voltage, V, in W} */
    public double powerCold(double voltage) {
        return DumpElement.power(resistanceCold, voltage);
    }

    /** {@return current of the cold elements at a voltage, V, in A} */
    public double currentCold(double voltage) {
        return DumpElement.current(resistanceCold, voltage);
    }
}
