package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * The bore at which a pipe loses a stated head: the root D of {@code h = (f L/D + K) V²/(2g)} ({@link DarcyWeisbach}), which
 * falls as D rises. Bisected between 0.1 mm and 100 m.
 */
public final class LeastBore {

    private LeastBore() {}

    /**
     * {@return the bore that loses just this head, m}
     *
     * @param headLoss m, above zero
     * @param flow m³/s, above zero
     * @param length m
     * @param roughness sand-grain, m
     * @param lossCoefficient ΣK on the bore sought
     * @param kinematicViscosity m²/s
     */
    public static double forLoss(
            double headLoss,
            double flow,
            double length,
            double roughness,
            double lossCoefficient,
            double kinematicViscosity) {
        Physical.positive("headLoss", headLoss);
        Physical.positive("flow", flow);
        double low = 1e-4;
        double high = 100;
        for (int i = 0; i < 200 && high / low > 1 + 1e-13; i++) {
            double bore = Math.sqrt(low * high);
            double lost = DarcyWeisbach.headLoss(flow, length, bore, roughness, lossCoefficient, kinematicViscosity);
            if (lost > headLoss) {
                low = bore;
            } else {
                high = bore;
            }
        }
        return high;
    }
}
