package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.plant.solved.OperatingPoint;
import org.leat.plant.solved.WaterSide;

/**
 * Running on one nozzle set, the battery taking what comes.
 *
 * @param nozzles the set
 * @param stream the flow of the stream meant; null where the design states none, so that water is taken as ample
 * @param water what the water does
 * @param operatingPoint where runner and alternator meet
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Running(NozzleGroup nozzles, @Nullable StreamLevel stream, WaterSide water, OperatingPoint operatingPoint)
        implements BusSituation {

    @Override
    public double lastingVoltage() {
        return operatingPoint.bus().bridge();
    }

    @Override
    public double batteryVoltage() {
        return operatingPoint.tracking() == null
                ? lastingVoltage()
                : operatingPoint.bus().battery();
    }

    @Override
    public double runnerSpeed() {
        return operatingPoint.speed();
    }

    @Override
    public BusHolder holder() {
        return operatingPoint.tracking() == null ? BusHolder.BATTERY : BusHolder.REGULATOR;
    }

    @Override
    public String id() {
        return "running/" + nozzles.name();
    }
}
