package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Turbulent friction factor (Darcy): {@code 1/√f = -2 log10(k/(3.7 D) + 2.51/(Re √f))}, k sand-grain roughness m, D bore
 * m. Published for Re from 4000 to 1e8 and k/D from 0 to 0.05; its error against experiment is a few per cent. It is
 * solved, not fitted: one step of the equation itself from 1/√f = 8, then three of Newton, whose error falls below 1e-13.
 *
 * <p>Source: Colebrook, J. Inst. Civ. Eng. 11 (1939) 133, equation 10. It does not judge the range: {@link DarcyFriction}
 * does, and covers the rest.
 */
public final class ColebrookWhite {

    private static final double PER_LN10 = 2 / Math.log(10);

    private ColebrookWhite() {}

    /**
     * {@return the friction factor, 1}
     *
     * @param reynolds Re, above zero
     * @param relativeRoughness k/D, not below zero
     */
    public static double frictionFactor(double reynolds, double relativeRoughness) {
        return solve(
                Physical.positive("reynolds", reynolds), Physical.notNegative("relativeRoughness", relativeRoughness));
    }

    /** The same without looking at the arguments, for inner loops. */
    static double solve(double reynolds, double relativeRoughness) {
        double rough = relativeRoughness / 3.7;
        double smooth = 2.51 / reynolds;
        double x = -PER_LN10 * Math.log(rough + 8 * smooth);
        for (int i = 0; i < 3; i++) {
            double inside = rough + smooth * x;
            x -= (x + PER_LN10 * Math.log(inside)) / (1 + PER_LN10 * smooth / inside);
        }
        return 1 / (x * x);
    }
}
