package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Head lost along a full round pipe: {@code h = (f L/D + K) V²/(2g)}, with f from {@link DarcyFriction}, L length m, D bore
 * m, K the sum of loss coefficients on that bore, V mean velocity m/s. Any text (White, Fluid Mechanics, 6.3 and 6.9).
 */
public final class DarcyWeisbach {

    private DarcyWeisbach() {}

    /**
     * {@return head lost, m}
     *
     * @param flow m³/s, not below zero
     * @param length m, not below zero
     * @param bore m
     * @param roughness k, m
     * @param lossCoefficient ΣK on the bore
     * @param kinematicViscosity m²/s
     */
    public static double headLoss(
            double flow,
            double length,
            double bore,
            double roughness,
            double lossCoefficient,
            double kinematicViscosity) {
        Physical.notNegative("length", length);
        Physical.notNegative("lossCoefficient", lossCoefficient);
        double velocity = Physical.notNegative("flow", flow) / (Math.PI / 4 * Physical.positive("bore", bore) * bore);
        if (velocity == 0) {
            return 0;
        }
        double reynolds = ReynoldsNumber.of(velocity, bore, kinematicViscosity);
        double f = DarcyFriction.frictionFactor(reynolds, roughness / bore);
        return (f * length / bore + lossCoefficient) * velocity * velocity / (2 * Gravity.STANDARD);
    }
}
