package org.leat.turbine;

import org.leat.law.Physical;

/**
 * What an {@link ImpulseRunner} is computed from.
 *
 * @param pitchRadius of the circle the jet touches [m]
 * @param bucketEfficiency share of the momentum law's torque that is reached (splash, entry, part of the jet lost) [1]
 * @param returnFactor k cos b2: relative speed out over in, times the cosine of the exit angle from the backward tangent
 *     [1]; 0 for a flat paddle
 * @param jetAngle of the jet to the wheel's plane [rad]
 * @param lateEntry water that no longer catches up with a fast bucket, see {@link ImpulseRunner} [1]
 * @param bearingTorque friction of bearings and seals [N m]
 * @param windage torque over angular speed squared [N m s2]
 * @param density of the water [kg/m3]
 */
public record RunnerParameters(
        double pitchRadius,
        double bucketEfficiency,
        double returnFactor,
        double jetAngle,
        double lateEntry,
        double bearingTorque,
        double windage,
        double density) {

    /** Density that {@link #straight} assumes [kg/m3]. */
    public static final double ROUND_DENSITY = 1000;

    public RunnerParameters {
        Physical.positive("pitchRadius", pitchRadius);
        Physical.positive("bucketEfficiency", bucketEfficiency);
        Physical.within("bucketEfficiency", bucketEfficiency, 0, 1);
        Physical.within("returnFactor", returnFactor, 0, 1);
        Physical.within("jetAngle", jetAngle, 0, 1.2);
        Physical.notNegative("lateEntry", lateEntry);
        Physical.notNegative("bearingTorque", bearingTorque);
        Physical.notNegative("windage", windage);
        Physical.positive("density", density);
    }

    /** {@return the momentum law alone for a jet in the wheel's plane: no entry loss, no friction, no windage} */
    public static RunnerParameters straight(double pitchRadius, double returnFactor) {
        return new RunnerParameters(pitchRadius, 1, returnFactor, 0, 0, 0, 0, ROUND_DENSITY);
    }

    /** {@return the same with another bucket efficiency [1]} */
    public RunnerParameters withBucketEfficiency(double other) {
        return new RunnerParameters(
                pitchRadius, other, returnFactor, jetAngle, lateEntry, bearingTorque, windage, density);
    }

    /** {@return the same with another jet angle [rad]} */
    public RunnerParameters withJetAngle(double other) {
        return new RunnerParameters(
                pitchRadius, bucketEfficiency, returnFactor, other, lateEntry, bearingTorque, windage, density);
    }

    /** {@return the same with another late-entry number [1]} */
    public RunnerParameters withLateEntry(double other) {
        return new RunnerParameters(
                pitchRadius, bucketEfficiency, returnFactor, jetAngle, other, bearingTorque, windage, density);
    }

    /** {@return the same with other friction [N m] and windage [N m s2]} */
    public RunnerParameters withFriction(double otherBearingTorque, double otherWindage) {
        return new RunnerParameters(
                pitchRadius,
                bucketEfficiency,
                returnFactor,
                jetAngle,
                lateEntry,
                otherBearingTorque,
                otherWindage,
                density);
    }

    /** {@return the same with another density of the water [kg/m3]} */
    public RunnerParameters withDensity(double other) {
        return new RunnerParameters(
                pitchRadius, bucketEfficiency, returnFactor, jetAngle, lateEntry, bearingTorque, windage, other);
    }
}
