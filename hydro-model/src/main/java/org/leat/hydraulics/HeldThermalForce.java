package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Force in a pipe held at both ends: {@code F = E α ΔT A}, N, with the modulus E [Pa], coefficient of expansion α [1/K], change
 * of temperature ΔT [K] and area of the wall A [m²]. With the short-term modulus it is an upper bound for plastics, which
 * relax within hours. Source: handbooks.
 */
public final class HeldThermalForce {

    private HeldThermalForce() {}

    /** {@return greatest force, N, pulling where the pipe cools} */
    public static double greatest(
            double modulus, double expansion, double temperatureChange, double outsideDiameter, double wall) {
        Physical.positive("modulus", modulus);
        Physical.notNegative("expansion", expansion);
        Physical.positive("outsideDiameter", outsideDiameter);
        Physical.within("wall", wall, 0, outsideDiameter / 2);
        double area = Math.PI * (outsideDiameter - wall) * wall;
        return modulus * expansion * Math.abs(Physical.finite("temperatureChange", temperatureChange)) * area;
    }
}
