package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Velocity that carries an air pocket down a falling pipe: {@code V = 1.1 (0.56 √sin θ + 0.61) √(gD)}, θ fall against the
 * horizontal, D bore m; 0.61 is for large pockets, 1.1 the author's margin. Slower water leaves air standing behind a high point
 * and needs a vent there. Measured for θ to 22.5°; outside above. Escarameia, Air problems in pipelines, HR Wallingford SR 649,
 * 2005, from memory; earlier rules (Kalinske and Robertson 1943) give the like. Below 50 mm bore surface tension holds air more
 * firmly than this says.
 */
public final class AirPocketFlushing {

    private static final double STEEPEST = Math.toRadians(22.5);

    private AirPocketFlushing() {}

    /**
     * {@return least velocity, m/s}
     *
     * @param bore m
     * @param fall of the pipe behind the high point against the horizontal, rad, not below zero
     */
    public static Answer leastVelocity(double bore, double fall) {
        Physical.positive("bore", bore);
        if (!(fall >= 0 && fall <= STEEPEST)) {
            return Answer.outside("air pocket in a falling pipe", "fall", fall, 0, STEEPEST, "rad");
        }
        return Answer.of(1.1 * (0.56 * Math.sqrt(Math.sin(fall)) + 0.61) * Math.sqrt(Gravity.STANDARD * bore));
    }
}
