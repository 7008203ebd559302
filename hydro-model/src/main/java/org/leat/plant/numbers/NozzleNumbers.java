package org.leat.plant.numbers;

import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;

/**
 * Nozzles, in SI.
 *
 * @param sets every set to be judged, the one open as built first; at least one
 * @param velocityCoefficient jet velocity over the ideal
 * @param contractionCoefficient jet area over bore area
 * @param branchBore of the pipe to each nozzle, m; empty where branches are not stated
 * @param branchLoss loss coefficient of each branch on its bore
 * @param shutOff valve or needle at a nozzle, its bore that of the branch, zero where that is not stated; null where no time is
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record NozzleNumbers(
        List<NozzleGroup> sets,
        double velocityCoefficient,
        double contractionCoefficient,
        OptionalDouble branchBore,
        double branchLoss,
        @Nullable ValveNumbers shutOff)
        implements NozzleNumbersBuilder.With {
    public NozzleNumbers {
        sets = List.copyOf(sets);
    }

    /** {@return the set open as built} */
    public NozzleGroup asBuilt() {
        return sets.get(0);
    }
}
