package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Pitch diameter at which a runner of given speed runs at a wanted ratio: {@code D = 2 phi Vj/omega}.
 *
 * <p>Symbols: {@code phi} bucket speed over jet velocity [1], on the jet and not on {@code sqrt(2 g H)}; {@code Vj} jet
 * velocity [m/s]; {@code omega} angular speed [rad/s]. Valid for all physical inputs. Source: kinematics.
 */
public final class OptimumPitchDiameter {

    private OptimumPitchDiameter() {}

    /** {@return pitch diameter [m]} */
    public static double of(double angularSpeed, double jetVelocity, double speedRatio) {
        Physical.positive("angularSpeed", angularSpeed);
        Physical.positive("jetVelocity", jetVelocity);
        Physical.positive("speedRatio", speedRatio);
        return 2 * speedRatio * jetVelocity / angularSpeed;
    }
}
