package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Woven mesh of round wire: {@code K = 1.3 (1 - f) + (1/f - 1)²} on the velocity of approach, f open share after blocking.
 * Holds for wire Reynolds numbers above about 1000; fine mesh in slow water loses more. Idelchik, Handbook of Hydraulic
 * Resistance, section 8, from memory. Outside where nothing is open.
 */
public final class WireMesh {

    private WireMesh() {}

    /** {@return open share of a clean square mesh, 1; clear opening and wire thickness in m} */
    public static double openShare(double opening, double wire) {
        double line = Physical.positive("opening", opening) / (opening + Physical.positive("wire", wire));
        return line * line;
    }

    /** {@return K on the velocity of approach, 1; open share of the surface after blocking, above 0 to 1} */
    public static Answer lossCoefficient(double openShare) {
        if (!(openShare > 0 && openShare <= 1)) {
            return Answer.outside("wire mesh", "openShare", openShare, 0, 1, "1");
        }
        double behind = 1 / openShare - 1;
        return Answer.of(1.3 * (1 - openShare) + behind * behind);
    }
}
