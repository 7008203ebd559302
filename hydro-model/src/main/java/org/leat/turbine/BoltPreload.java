package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Preload of a tightened bolt {@code F = T/(K d)}, and torque that a clamped joint carries by friction
 * {@code F n mu R}.
 *
 * <p>Symbols: {@code T} tightening torque [N m]; {@code K} nut factor, about 0.2 dry and 0.15 oiled [1]; {@code d} nominal
 * diameter [m]; {@code n} bolts; {@code mu} friction in the joint [1]; {@code R} radius of the bolt circle [m]. A torque
 * wrench scatters by a quarter. Plastic under a bolt head creeps and loses preload: metal sleeve or wide washer. Source:
 * Shigley, Mechanical Engineering Design, nut factor; Coulomb.
 */
public final class BoltPreload {

    private BoltPreload() {}

    /** Nut factor of dry threads [1]. */
    public static final double DRY = 0.2;

    /** {@return preload of one bolt [N]} */
    public static double of(double tighteningTorque, double nutFactor, double diameter) {
        Physical.notNegative("tighteningTorque", tighteningTorque);
        Physical.positive("nutFactor", nutFactor);
        return tighteningTorque / (nutFactor * Physical.positive("diameter", diameter));
    }

    /** {@return torque that friction carries before the joint slips [N m]} */
    public static double frictionTorque(double preload, int bolts, double friction, double boltCircleRadius) {
        Physical.notNegative("preload", preload);
        Physical.positive("bolts", bolts);
        Physical.notNegative("friction", friction);
        return preload * bolts * friction * Physical.positive("boltCircleRadius", boltCircleRadius);
    }
}
