package org.leat.readings;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.leat.electrics.BridgeFault;
import org.leat.plant.Plant;

/**
 * A plant as it may be: as designed, or changed by a fault.
 *
 * @param plant with its numbers changed
 * @param standingHead that the standing pressure tells, m; air in the pipe leaves it
 * @param pinch loss coefficient that sits below the middle of the pipe, on the last bore
 * @param leak flow lost on the way, m³/s
 * @param dumpConductance of a dump load that is on while it should not be, 1/Ω
 * @param batteryShare of the current that goes into the battery
 * @param meterFactor what the meter shows over what alternating volts are
 * @param bridge what is broken in winding or bridge
 * @param dumpDead whether the dump load does not take anything
 */
@RecordBuilder
@RecordBuilder.Options(
        enableWither = true,
        addFunctionalMethodsToWith = false,
        addStaticBuilder = false,
        builderClassModifiers = {},
        fileComment = "Written by the build from the record.")
record Condition(
        Plant plant,
        double standingHead,
        double pinch,
        double leak,
        double dumpConductance,
        double batteryShare,
        double meterFactor,
        BridgeFault bridge,
        boolean dumpDead)
        implements ConditionBuilder.With {

    static Condition of(Plant plant) {
        return new Condition(plant, plant.numbers().site().grossHead(), 0, 0, 0, 1, 1, BridgeFault.NONE, false);
    }
}
