package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Force of a jet on one bucket: {@code F = rho A (V - U)^2 (1 + kappa)}.
 *
 * <p>Symbols: {@code rho} density [kg/m3]; {@code A} jet's cross-section [m2]; {@code V} jet velocity, {@code U} bucket
 * speed [m/s]; {@code kappa = k cos b2} return factor [1]. One bucket alone sees the relative flow, a wheel of many the
 * whole one: this is not torque over radius. Standstill or jam gives the static case, running the fatigue case. A bucket
 * faster than the jet is not reached: zero. Source: momentum, any text.
 */
public final class JetForce {

    private JetForce() {}

    /** {@return force on a bucket that stands still [N]} */
    public static double stalled(double density, double jetArea, double jetVelocity, double returnFactor) {
        return running(density, jetArea, jetVelocity, 0, returnFactor);
    }

    /** {@return force on one moving bucket [N]} */
    public static double running(
            double density, double jetArea, double jetVelocity, double bucketSpeed, double returnFactor) {
        Physical.positive("density", density);
        Physical.notNegative("jetArea", jetArea);
        Physical.notNegative("jetVelocity", jetVelocity);
        Physical.notNegative("bucketSpeed", bucketSpeed);
        Physical.within("returnFactor", returnFactor, 0, 1);
        double relative = Math.max(0, jetVelocity - bucketSpeed);
        return density * jetArea * relative * relative * (1 + returnFactor);
    }
}
