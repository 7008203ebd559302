package org.leat.plant.solve;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.OperatingPoint;

/** See {@link OperatingPoint}. */
record SolvedPoint(
        Hold hold,
        Shaft shaft,
        Output output,
        double windingTemperature,
        BusVolts bus,
        TorquePeak peak,
        List<Crossing> crossings,
        List<StableSpeed> otherSpeeds,
        @Nullable Tracking tracking,
        EnergyAccount energy)
        implements OperatingPoint {
    SolvedPoint {
        crossings = List.copyOf(crossings);
        otherSpeeds = List.copyOf(otherSpeeds);
    }
}
