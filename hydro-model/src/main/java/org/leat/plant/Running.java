package org.leat.plant;

import org.jspecify.annotations.Nullable;

/**
 * Running on one nozzle set, the battery taking what comes.
 *
 * @param nozzles the set
 * @param stream the flow of the stream meant; null where the design states none, so that water is taken as ample
 * @param water what the water does
 * @param operation where runner and alternator meet
 */
public record Running(NozzleGroup nozzles, @Nullable StreamLevel stream, WaterSide water, Operation operation)
        implements BusSituation {

    @Override
    public double lastingVoltage() {
        return operation.bus().bridge();
    }

    @Override
    public double runnerSpeed() {
        return operation.speed();
    }

    @Override
    public BusHolder holder() {
        return operation.tracking() == null ? BusHolder.BATTERY : BusHolder.REGULATOR;
    }

    @Override
    public String id() {
        return "running/" + nozzles.name();
    }
}
