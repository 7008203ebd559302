package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Shear in the threads of equal bolts on a circle that carry a torque without help of friction: {@code τ = T/(n R A_s)}, Pa, with the
 * torque T [N·m], n bolts on the radius R [m] and the stress area of a coarse thread A_s, at least 0.69 of the area of its nominal
 * diameter from M3 up.
 *
 * <p>Source: statics; stress areas of ISO 898-1 table 4 (from memory: M3 5.03, M4 8.78, M6 20.1, M8 36.6, M12 84.3 mm²).
 */
public final class BoltShear {

    private static final double STRESS_AREA = 0.69;

    private BoltShear() {}

    /**
     * {@return shear stress, Pa}
     *
     * @param torque that the bolts carry together, N·m
     * @param bolts how many
     * @param diameter nominal, of the thread, m
     * @param circle diameter of the circle on which they sit, m
     */
    public static double stress(double torque, int bolts, double diameter, double circle) {
        Physical.positive("diameter", diameter);
        Physical.positive("circle", circle);
        Physical.within("bolts", bolts, 1, 1000);
        double area = STRESS_AREA * Math.PI / 4 * diameter * diameter;
        return Physical.finite("torque", torque) / (bolts * circle / 2 * area);
    }
}
