package org.leat.electrics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Settled temperature of a copper winding whose loss grows with it at constant current: T = T_a + θ (P_fe + P_r (234.5 +
 * T)/(234.5 + T_r)), a straight line in T. With g = θ P_r/(234.5 + T_r), T = (T_a + θ P_fe + g 234.5)/(1 − g). No settled
 * temperature exists for g ≥ 1: the loss grows faster than the heat leaves; the answer is then outside.
 *
 * <p>Source: heat balance with the copper law of {@link CopperResistance}. Symbols: T_a air, T_r temperature at which the
 * copper loss P_r was taken, °C; P_fe iron and friction loss, taken to leave by the winding's way too (the safe side), W;
 * θ thermal resistance of winding to air, K/W.
 */
public final class WindingTemperature {

    private static final double COPPER = 234.5;

    private WindingTemperature() {}

    /**
     * {@return the settled temperature, °C}
     *
     * @param ambient °C
     * @param lossAt20 copper loss of this current at 20 °C, W
     * @param thermalResistance winding to air, K/W
     */
    public static Answer of(double ambient, double lossAt20, double thermalResistance) {
        return of(ambient, 0, lossAt20, 20, thermalResistance);
    }

    /**
     * {@return the settled temperature, °C}
     *
     * @param ambient °C
     * @param ironLoss iron and friction, W
     * @param copperLoss of this current at the temperature below, W
     * @param takenAt temperature of the winding for that loss, °C
     * @param thermalResistance winding to air, K/W
     */
    public static Answer of(
            double ambient, double ironLoss, double copperLoss, double takenAt, double thermalResistance) {
        Physical.notNegative("iron loss", ironLoss);
        Physical.notNegative("copper loss", copperLoss);
        double warm = Physical.positive("copper above its lowest temperature", COPPER + takenAt);
        double g = thermalResistance * copperLoss / warm;
        if (!(g < 1)) {
            return Answer.outside("winding temperature", "loss times thermal resistance", warm * g, 0, warm, "K");
        }
        return Answer.of((ambient + thermalResistance * ironLoss + g * COPPER) / (1 - g));
    }
}
