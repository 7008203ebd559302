package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.leat.design.RunnerKind;

/**
 * Runner, in SI. Friction and windage of the wheel are part of its efficiency.
 *
 * @param kind how it turns the jet
 * @param pitchDiameter m
 * @param jetAngle of the jet against the wheel's plane, rad
 * @param returnFactor relative velocity leaving over entering, times the cosine of the exit angle against the backward
 *     tangent
 * @param bucketEfficiency share of the momentum law's torque that is reached
 * @param lateEntry water that no longer catches up with a fast bucket
 * @param bestSpeedRatio bucket speed over jet velocity of most power
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record RunnerNumbers(
        RunnerKind kind,
        double pitchDiameter,
        double jetAngle,
        double returnFactor,
        double bucketEfficiency,
        double lateEntry,
        double bestSpeedRatio)
        implements RunnerNumbersBuilder.With {}
