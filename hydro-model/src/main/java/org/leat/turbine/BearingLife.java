package org.leat.turbine;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Rating life of a rolling bearing: {@code L10h = 1e6/(60 n) (C/P)^p} hours, {@code p} 3 for ball and 10/3 for roller
 * bearings; modified {@code a1 aISO L10h}.
 *
 * <p>Symbols: {@code C} basic dynamic load rating and {@code P} equivalent load [N]; {@code n} speed, passed as angular
 * speed [rad/s]; {@code a1} for reliability, {@code aISO} for lubrication and dirt [1]. Lives in seconds. Range by the
 * standard: {@code P} at most half of {@code C}; above it outside. Water past the seals ends a bearing of a small turbine
 * long before this life does. Source: ISO 281:2007, 5.3 and 6.3.
 */
public final class BearingLife {

    private BearingLife() {}

    private static final double BALL = 3;
    private static final double ROLLER = 10.0 / 3;

    /** {@return life that nine in ten reach [s], or what is outside} */
    public static Answer basic(double dynamicRating, double equivalentLoad, double angularSpeed, boolean roller) {
        Physical.positive("dynamicRating", dynamicRating);
        Physical.positive("equivalentLoad", equivalentLoad);
        Physical.positive("angularSpeed", angularSpeed);
        if (equivalentLoad > 0.5 * dynamicRating) {
            return Answer.outside("ISO 281 rating life", "equivalentLoad", equivalentLoad, 0, 0.5 * dynamicRating, "N");
        }
        double ratio = dynamicRating / equivalentLoad;
        return Answer.of(1e6 * 2 * Math.PI / angularSpeed * Math.pow(ratio, roller ? ROLLER : BALL));
    }

    /** {@return load rating for a wanted life [N]} */
    public static double neededRating(double equivalentLoad, double angularSpeed, double life, boolean roller) {
        Physical.positive("equivalentLoad", equivalentLoad);
        Physical.positive("angularSpeed", angularSpeed);
        Physical.positive("life", life);
        double millionTurns = life * angularSpeed / (2 * Math.PI) / 1e6;
        return equivalentLoad * Math.pow(millionTurns, 1 / (roller ? ROLLER : BALL));
    }
}
