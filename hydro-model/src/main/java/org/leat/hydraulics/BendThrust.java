package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Force of the water on a bend, along its bisector: {@code F = 2 (p A + ρ Q²/A) sin(θ/2)}, N, with gauge pressure p [Pa] (the
 * surge or the test pressure, whichever is higher), area A [m²], flow Q [m³/s], density ρ [kg/m³], deflection θ [rad].
 *
 * <p>Source: momentum theorem; EN 805. With push-fit joints the area is that of the outside diameter. The momentum term is
 * under one per cent in penstocks of this size.
 */
public final class BendThrust {

    private BendThrust() {}

    /** {@return force on the bend, N} */
    public static double force(double pressure, double density, double flow, double diameter, double deflection) {
        Physical.within("deflection", deflection, 0, Math.PI);
        return 2 * Momentum.along(pressure, density, flow, diameter) * Math.sin(deflection / 2);
    }
}
