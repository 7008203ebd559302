package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Bucket speed over jet velocity: {@code phi = omega D/(2 Vj)}.
 *
 * <p>Symbols: {@code omega} angular speed [rad/s]; {@code D} pitch diameter [m]; {@code Vj} jet velocity [m/s]. Books
 * also give it on {@code sqrt(2 g H)}, which is {@code Vj/Cv}: that number is smaller by the velocity coefficient
 * {@code Cv}. Valid for all physical inputs. Source: definition.
 */
public final class SpeedRatio {

    private SpeedRatio() {}

    /** {@return bucket speed over jet velocity [1]} */
    public static double onJet(double pitchDiameter, double angularSpeed, double jetVelocity) {
        Physical.positive("pitchDiameter", pitchDiameter);
        Physical.notNegative("angularSpeed", angularSpeed);
        Physical.positive("jetVelocity", jetVelocity);
        return 0.5 * angularSpeed * pitchDiameter / jetVelocity;
    }

    /** {@return bucket speed over sqrt(2 g H) [1] from the ratio on the jet and the velocity coefficient} */
    public static double onHead(double ratioOnJet, double velocityCoefficient) {
        Physical.notNegative("ratioOnJet", ratioOnJet);
        return ratioOnJet * Physical.positive("velocityCoefficient", velocityCoefficient);
    }
}
