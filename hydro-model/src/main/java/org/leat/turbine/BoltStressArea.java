package org.leat.turbine;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Tensile stress area of a metric bolt: {@code pi/4 (d - 0.9382 P)^2}.
 *
 * <p>Symbols: {@code d} nominal diameter, {@code P} pitch [m]. Coarse pitches by ISO 261 for M3 to M24; other diameters
 * have none and are outside. Source: ISO 898-1, stress area {@code A_s,nom} (table: M6 20.1, M8 36.6, M10 58.0, M12 84.3
 * mm2).
 */
public final class BoltStressArea {

    private BoltStressArea() {}

    private static final double[] DIAMETER = {3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24};
    private static final double[] PITCH = {0.5, 0.7, 0.8, 1, 1.25, 1.5, 1.75, 2, 2, 2.5, 2.5, 2.5, 3};

    /** {@return stress area [m2]} */
    public static double of(double diameter, double pitch) {
        Physical.positive("diameter", diameter);
        Physical.positive("pitch", pitch);
        double across = diameter - 0.9382 * pitch;
        return Math.PI / 4 * across * across;
    }

    /** {@return coarse pitch [m] of a nominal diameter [m], or what is outside} */
    public static Answer coarsePitch(double diameter) {
        Physical.positive("diameter", diameter);
        for (int i = 0; i < DIAMETER.length; i++) {
            if (Math.abs(diameter * 1000 - DIAMETER[i]) < 1e-6) {
                return Answer.of(PITCH[i] / 1000);
            }
        }
        return Answer.outside("ISO 261 coarse thread", "diameter", diameter, 0.003, 0.024, "m");
    }
}
