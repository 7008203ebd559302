package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Gravity;

/**
 * Thin-plate weir across the whole channel: {@code Q = (0.602 + 0.083 h/p) (2/3) √(2g) b (h + 0.0012)^1.5}, h head above the
 * crest m, p crest above the bed m, b width m. The space under the sheet of water must be aired. Rehbock 1929, in ISO
 * 1438:2017, clause 9; range: h 0.03 to 0.75 m, b from 0.3 m, p from 0.1 m, h/p to 1. Uncertainty as {@link KindsvaterCarter}.
 */
public final class Rehbock {

    private static final String LAW = "ISO 1438 full-width weir, Rehbock";

    private Rehbock() {}

    /** {@return flow, m³/s; or which measure is outside the standard} Arguments in m. */
    public static Answer flow(double width, double head, double crestHeight) {
        if (!(head >= 0.03 && head <= 0.75)) {
            return Answer.outside(LAW, "head", head, 0.03, 0.75, "m");
        }
        if (!(width >= 0.3)) {
            return Answer.below(LAW, "width", width, 0.3, "m");
        }
        if (!(crestHeight >= 0.1)) {
            return Answer.below(LAW, "crestHeight", crestHeight, 0.1, "m");
        }
        double ratio = head / crestHeight;
        if (ratio > 1) {
            return Answer.outside(LAW, "head/crestHeight", ratio, 0, 1, "1");
        }
        double effective = head + 0.0012;
        return Answer.of((0.602 + 0.083 * ratio)
                * (2.0 / 3)
                * Math.sqrt(2 * Gravity.STANDARD)
                * width
                * effective
                * Math.sqrt(effective));
    }
}
