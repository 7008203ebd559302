package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Speed at which sand sinks in still water: {@code w = R g d² / (18 ν + √(0.75 C R g d³))}, d grain m, ν m²/s, R 1.65 (quartz
 * under water over water), C 1.0 for natural grains, 0.4 for smooth spheres. Stokes' law for silt, a constant drag for gravel,
 * and one curve between; grains of other shape differ by a quarter and more. Ferguson and Church, J. Sediment. Res. 74 (2004)
 * 933, constants from memory.
 *
 * <p>A basin catches all grains that sink faster than {@code Q/(L B)}, flow over surface (Hazen 1904, still water; a basin with
 * eddies catches less).
 */
public final class SettlingVelocity {

    /** Density of quartz less that of water over that of water, 1. */
    public static final double QUARTZ = 1.65;

    private static final double LAMINAR = 18;
    private static final double NATURAL_GRAINS = 1.0;

    private SettlingVelocity() {}

    /** {@return sinking speed of a natural quartz grain, m/s} */
    public static double ofSand(double grain, double kinematicViscosity) {
        double weight = QUARTZ * Gravity.STANDARD * Physical.positive("grain", grain) * grain;
        double drag = Math.sqrt(0.75 * NATURAL_GRAINS * weight * grain);
        return weight / (LAMINAR * Physical.positive("kinematicViscosity", kinematicViscosity) + drag);
    }

    /**
     * {@return the finest natural quartz grain that a basin wholly catches, m; finer ones reach the runner}
     *
     * @param flow m³/s, above zero
     * @param length of the basin, m
     * @param width of the basin, m
     */
    public static double finestGrainCaught(double flow, double length, double width, double kinematicViscosity) {
        double rate = Physical.positive("flow", flow)
                / (Physical.positive("length", length) * Physical.positive("width", width));
        double low = 1e-7;
        double high = 10;
        for (int i = 0; i < 100; i++) {
            double middle = Math.sqrt(low * high);
            if (ofSand(middle, kinematicViscosity) < rate) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
