package org.leat.electrics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Rating of a device that carries its current day and night: {@code I_n ≥ 1.25 I_B}, for loads of three hours and more, unless the
 * assembly is listed for all of its rating. A stream never stops, so every device of the turbine's side is meant; so is the fuse of
 * a dump branch, whose current is that of the cold element, {@code 1.25 V/R}.
 *
 * <p>Source: NEC 210.20(A) and 215.3 (read in a maker's bulletin). A rule of one national code: IEC 60364 has none like it.
 */
public final class ContinuousLoad {

    /** Rating over the load that is carried for three hours and more. */
    public static final double FACTOR = 1.25;

    private ContinuousLoad() {}

    /** {@return least rating, A, for a current, A, carried day and night} */
    public static double leastRating(double current) {
        return FACTOR * Physical.notNegative("current", current);
    }

    /** {@return the least rating that is made, A, as {@link StandardFuseRatings}} Outside where none is large enough. */
    public static Answer leastMade(double current) {
        return StandardFuseRatings.atLeast(leastRating(current));
    }

    /** {@return least rating, A, of the fuse of a dump branch: its greatest voltage, V, over its cold resistance, Ω} */
    public static double dumpBranch(double voltage, double coldResistance) {
        return leastRating(
                Physical.notNegative("voltage", voltage) / Physical.positive("coldResistance", coldResistance));
    }
}
