package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Force of the water on a closed end or a shut valve: {@code F = p A}, N, with gauge pressure p [Pa] and the area A [m²] of
 * the diameter on which the joint seals: the outside diameter for push-fit joints. Source: EN 805.
 */
public final class EndThrust {

    private EndThrust() {}

    /** {@return force, N} */
    public static double force(double pressure, double diameter) {
        return Physical.finite("pressure", pressure) * Momentum.area(diameter);
    }
}
