package org.leat.hydraulics;

import org.leat.law.Physical;

/** Pressure force and flow of momentum through a cross-section: {@code p A + ρ Q²/A}, N. Source: momentum theorem. */
final class Momentum {

    private Momentum() {}

    static double along(double pressure, double density, double flow, double diameter) {
        double area = area(diameter);
        Physical.finite("pressure", pressure);
        Physical.finite("flow", flow);
        return pressure * area + Physical.positive("density", density) * flow * flow / area;
    }

    static double area(double diameter) {
        return Math.PI / 4 * Physical.positive("diameter", diameter) * diameter;
    }
}
