package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Outer overpressure on a pipe whose water stands below the atmosphere: {@code p = −ρ g h}, Pa, at most {@code pa − pv}, where the
 * water boils; 0 where the pressure head h [m] is above 0. Density ρ [kg/m³], air pressure pa, vapour pressure pv [Pa]. To be held
 * against {@link RingBuckling}: with the short-term modulus for a surge, the long-term one for suction that stands.
 *
 * <p>Source: hydrostatics. Groundwater over a buried pipe adds to it.
 */
public final class SuctionLoad {

    private SuctionLoad() {}

    /** {@return pressure from outside, Pa} */
    public static double pressure(double pressureHead, double density, double airPressure, double vapourPressure) {
        Physical.finite("pressureHead", pressureHead);
        Physical.positive("density", density);
        double vacuum = Physical.positive("airPressure", airPressure)
                - Physical.within("vapourPressure", vapourPressure, 0, airPressure);
        return Math.max(0, Math.min(vacuum, -density * Gravity.STANDARD * pressureHead));
    }
}
