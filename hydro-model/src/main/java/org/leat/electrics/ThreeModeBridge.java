package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Three-phase diode bridge on a steady voltage, averaged over a period: all phases conducting, commutation of two and
 * three diodes, or pulses. Nothing flows until the peak line EMF exceeds the bus and two
 * diode thresholds: √3 E > V'.
 *
 * <p>Between bridge and battery lies the resistance ρ of battery and d.c. cables: it is carried through the equations
 * with the ripple of the current, so that ρ > 0 and V' = 2 V_F0 is also a bare resistor. With ρ = 0 it is the bridge on
 * a capacitor. For a smooth direct current (choke) see {@link SmoothCurrentBridge}.
 *
 * <p>Holds for sine EMF, constant inductance, three equal phases, straight-line diodes. Resistances below 10⁻⁴ X or
 * reactances below 10⁻⁴ R are computed as those (effect below 0.02 %). Mean-value formula for comparison: {@link
 * SmoothCurrentBridge}.
 *
 * <p>Source: circuit equations; checked against circuit simulation (ngspice), see the tests.
 */
public final class ThreeModeBridge {

    private static final double ROOT3 = Math.sqrt(3);

    private ThreeModeBridge() {}

    /**
     * {@return the currents}
     *
     * @param phaseEmf E, peak, star equivalent, V
     * @param reactance X, electrical angular frequency times phase inductance, Ω
     * @param resistance R, of one phase, with its lead to the bridge and the slope resistance of one diode, Ω
     * @param clampVoltage V', EMF of the bus and two diode thresholds, V
     * @param busResistance ρ, between bridge and that EMF, Ω
     */
    public static BridgeCurrents solve(
            double phaseEmf, double reactance, double resistance, double clampVoltage, double busResistance) {
        double e = Physical.notNegative("phase EMF", phaseEmf);
        double v = Physical.notNegative("clamp voltage", clampVoltage);
        double rho = Physical.notNegative("bus resistance", busResistance);
        double x = Math.max(Physical.notNegative("reactance", reactance), 1e-4 * resistance);
        double r = Math.max(Physical.notNegative("resistance", resistance), 1e-4 * reactance);
        if (v >= ROOT3 * e) {
            return BridgeCurrents.NONE;
        }
        if (r == 0) {
            throw new IllegalArgumentException("a winding needs resistance or reactance");
        }
        BridgeCurrents full = FullConduction.solve(e, x, r, v, rho);
        if (full != null) {
            return full;
        }
        BridgeCurrents pulses = OverlappingPulses.solve(e, x, r, v, rho);
        if (pulses != null) {
            return pulses;
        }
        BridgeCurrents commutating = Commutation.solve(e, x, r, v, rho);
        return commutating != null ? commutating : IsolatedPulses.solve(e, x, r, v, rho);
    }
}
