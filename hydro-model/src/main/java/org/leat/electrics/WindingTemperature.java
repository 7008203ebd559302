package org.leat.electrics;

import org.leat.law.Answer;

/**
 * Settled temperature of a copper winding whose loss grows with it at constant current: T = T_a + θ P20 (234.5 + T)/254.5,
 * a straight line in T. With P20 the loss at 20 °C and θ the thermal resistance, T = (T_a + g 234.5)/(1 − g), g = θ
 * P20/254.5. No settled temperature exists for g ≥ 1: thermal runaway; the answer is then outside.
 *
 * <p>Source: energy balance with the copper law of {@link CopperResistance}.
 */
public final class WindingTemperature {

    private WindingTemperature() {}

    /**
     * {@return the settled temperature, °C}
     *
     * @param ambient °C
     * @param lossAt20 copper loss of this current at 20 °C, W
     * @param thermalResistance winding to air, K/W
     */
    public static Answer of(double ambient, double lossAt20, double thermalResistance) {
        double g = thermalResistance * lossAt20 / 254.5;
        if (!(g < 1)) {
            return Answer.outside("winding temperature", "loss times thermal resistance", 254.5 * g, 0, 254.5, "K");
        }
        return Answer.of((ambient + g * 234.5) / (1 - g));
    }
}
