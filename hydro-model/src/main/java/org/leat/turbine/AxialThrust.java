package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Axial thrust of an oblique jet on its runner: {@code rho Q (V sin a - w2 sin b2)}, {@code w2 = k w1}.
 *
 * <p>Symbols: {@code rho} density [kg/m3]; {@code Q} flow of all jets [m3/s]; {@code V} jet velocity and {@code U} bucket
 * speed [m/s]; {@code a} jet angle to the wheel's plane, {@code b2} exit angle from the backward tangent [rad]; {@code k}
 * relative speed out over in [1]; {@code w1 = hypot(V cos a - U, V sin a)}. Positive: along the jet. Valid for all
 * physical inputs. Source: momentum, any text. It loads one bearing along the shaft.
 */
public final class AxialThrust {

    private AxialThrust() {}

    /** {@return thrust along the shaft [N]} */
    public static double of(
            double density,
            double flow,
            double jetVelocity,
            double bucketSpeed,
            double jetAngle,
            double speedKept,
            double exitAngle) {
        Physical.positive("density", density);
        Physical.notNegative("flow", flow);
        Physical.notNegative("jetVelocity", jetVelocity);
        Physical.finite("bucketSpeed", bucketSpeed);
        Physical.within("speedKept", speedKept, 0, 1);
        double axial = jetVelocity * Math.sin(jetAngle);
        double relative = Math.hypot(jetVelocity * Math.cos(jetAngle) - bucketSpeed, axial);
        return density * flow * (axial - speedKept * relative * Math.sin(exitAngle));
    }
}
