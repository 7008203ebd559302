package org.leat.plant;

import org.leat.design.RunnerKind;

/**
 * Runner, in SI.
 *
 * @param kind how it turns the jet
 * @param pitchDiameter m
 * @param jetAngle of the jet against the wheel's plane, rad
 * @param relativeVelocityFactor k: relative velocity leaving over entering
 * @param exitAngle of the leaving water against the backward tangent, rad
 * @param frictionTorque of bearings and seals, N·m
 * @param windage torque over speed squared, N·m·s²
 */
public record RunnerNumbers(
        RunnerKind kind,
        double pitchDiameter,
        double jetAngle,
        double relativeVelocityFactor,
        double exitAngle,
        double frictionTorque,
        double windage) {

    /** {@return the same wheel with another pitch diameter} */
    public RunnerNumbers withPitchDiameter(double metres) {
        return new RunnerNumbers(kind, metres, jetAngle, relativeVelocityFactor, exitAngle, frictionTorque, windage);
    }
}
