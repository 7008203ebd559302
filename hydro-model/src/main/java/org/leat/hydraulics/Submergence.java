package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Water needed over a pipe's inlet against air-drawing vortices; V velocity in the pipe m/s, D bore m, {@code F = V/√(gD)}. The
 * rules come from large intakes; at pipes below 0.1 m they are a guide, and the greatest of the three is taken. They use
 * different reference levels: see each.
 */
public final class Submergence {

    /** Gordon's constant for water that arrives straight, s/√m; 0.3 in feet. */
    public static final double STRAIGHT_APPROACH = 0.543;

    /** Gordon's constant for water that arrives from the side, s/√m; 0.4 in feet. */
    public static final double LATERAL_APPROACH = 0.724;

    private Submergence() {}

    /** {@return {@code C V √D} above the crown, m} Gordon, Water Power, April 1970. */
    public static double gordon(double approach, double velocity, double bore) {
        return Physical.positive("approach", approach)
                * Physical.notNegative("velocity", velocity)
                * Math.sqrt(Physical.positive("bore", bore));
    }

    /** {@return {@code D (1 + 2.3 F)} above the inlet, m: its axis where the pipe lies flat} ANSI/HI 9.8 (Hecker). */
    public static double hydraulicInstitute(double velocity, double bore) {
        return bore * (1 + 2.3 * froude(velocity, bore));
    }

    /** {@return {@code D (0.5 + 2 F)} above the axis, m} Knauss, Swirling Flow Problems at Intakes, 1987, from memory. */
    public static double knauss(double velocity, double bore) {
        return bore * (0.5 + 2 * froude(velocity, bore));
    }

    /** {@return the greatest of all three, above the crown of a pipe that lies flat, m} */
    public static double leastAboveCrown(double approach, double velocity, double bore) {
        double aboveAxis = Math.max(hydraulicInstitute(velocity, bore), knauss(velocity, bore)) - bore / 2;
        return Math.max(gordon(approach, velocity, bore), aboveAxis);
    }

    private static double froude(double velocity, double bore) {
        return Physical.notNegative("velocity", velocity)
                / Math.sqrt(Gravity.STANDARD * Physical.positive("bore", bore));
    }
}
