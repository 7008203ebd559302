package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Thin plate with sharp holes: {@code K = (0.707 √(1 - f) + 1 - f)² / f²} on the velocity of approach, f open share of the
 * drilled surface; on the velocity in the holes the same without {@code f²}, 2.9 at most. Blocked holes lower f. Holds for holes
 * of Reynolds number above about 1e5; at a few thousand the loss is some 20 % higher. Idelchik, Handbook of Hydraulic Resistance,
 * section 8, from memory. Outside where nothing is open.
 */
public final class PerforatedPlate {

    private PerforatedPlate() {}

    /** {@return open area of clean holes, m²; bore of a hole in m} */
    public static double holeArea(int holes, double holeDiameter) {
        return Physical.positive("holes", holes)
                * Math.PI
                / 4
                * Physical.positive("holeDiameter", holeDiameter)
                * holeDiameter;
    }

    /** {@return K on the velocity of approach, 1; open share of the surface after blocking, above 0 to 1} */
    public static Answer lossCoefficient(double openShare) {
        if (!(openShare > 0 && openShare <= 1)) {
            return Answer.outside("thin perforated plate", "openShare", openShare, 0, 1, "1");
        }
        return Answer.of(lossCoefficientOnHoles(openShare) / (openShare * openShare));
    }

    /** {@return K on the velocity in the open holes, 1; open share 0 (holes far apart, the most loss) to 1} */
    public static double lossCoefficientOnHoles(double openShare) {
        double solid = 1 - Physical.within("openShare", openShare, 0, 1);
        double root = 0.707 * Math.sqrt(solid) + solid;
        return root * root;
    }
}
