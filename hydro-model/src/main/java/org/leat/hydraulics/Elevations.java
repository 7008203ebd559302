package org.leat.hydraulics;

import java.util.List;
import org.leat.law.Physical;

/** Elevation of a penstock above its nozzle axis: one number at the top and one at the end of each section, m. */
final class Elevations {

    private Elevations() {}

    /** Refuses a list that does not fit. */
    static void check(List<PenstockSection> sections, double[] elevations) {
        if (elevations.length != sections.size() + 1) {
            throw new IllegalArgumentException(
                    "needs " + (sections.size() + 1) + " elevations for " + sections.size() + " sections");
        }
        for (double z : elevations) {
            Physical.finite("elevation", z);
        }
    }

    /** {@return one even slope from the top to the nozzle axis} */
    static double[] evenSlope(List<PenstockSection> sections, double top) {
        double length = 0;
        for (PenstockSection s : sections) {
            length += s.length();
        }
        double[] out = new double[sections.size() + 1];
        out[0] = top;
        double below = length;
        for (int i = 0; i < sections.size(); i++) {
            below -= sections.get(i).length();
            out[i + 1] = i + 1 == sections.size() ? 0 : top * below / length;
        }
        return out;
    }
}
